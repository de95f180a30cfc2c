/**
 * True where a key that acts on the drawing is meant for something else: the table has the focus, or a person
 * has marked text on the page to copy.
 */
export function keysGoElsewhere(): boolean {
  if (typeof document === "undefined") return false;
  if (document.activeElement?.closest("[role=grid], [role=table], table, .table-place, .side, .over"))
    return true;
  return !(window.getSelection()?.isCollapsed ?? true);
}
