import type { Box } from "./hit-model.ts";

/** How the drawing is shifted and scaled on the page: screen = drawing × zoom + (x, y), CSS pixels. */
export type View = { readonly x: number; readonly y: number; readonly zoom: number };
export type Size = { readonly width: number; readonly height: number };

export const LEAST_ZOOM = 0.05;
export const MOST_ZOOM = 4;
/** Below this no text of the drawing can be read: it is left out, and parts show their designation large. */
export const NEAR = 0.5;
/** Below this a contact is too small to be pointed at. */
export const CONTACTS_FROM = 0.4;

/**
 * The view that shows a whole box in the middle of the page.
 * @param mostZoom a small harness is not blown up past this
 */
export function viewOf(box: Box, page: Size, mostZoom = 1, margin = 40): View {
  const width = Math.max(1, page.width - 2 * margin);
  const height = Math.max(1, page.height - 2 * margin);
  const fits = Math.min(width / Math.max(1, box.width), height / Math.max(1, box.height));
  const zoom = Math.min(mostZoom, MOST_ZOOM, Math.max(LEAST_ZOOM, fits));
  return {
    zoom,
    x: Math.round(page.width / 2 - (box.x + box.width / 2) * zoom),
    y: Math.round(page.height / 2 - (box.y + box.height / 2) * zoom),
  };
}

/** The piece of the drawing that a page of some size shows. */
export function seenBox(view: View, page: Size): Box {
  return {
    x: -view.x / view.zoom,
    y: -view.y / view.zoom,
    width: page.width / view.zoom,
    height: page.height / view.zoom,
  };
}

/** The least shift of the view, without another zoom, that brings a box into sight; the view itself if it is. */
export function reveal(view: View, page: Size, box: Box, margin = 32): View {
  const shift = (from: number, to: number, length: number): number => {
    if (to - from > length - 2 * margin) return length / 2 - (from + to) / 2;
    if (from < margin) return margin - from;
    if (to > length - margin) return length - margin - to;
    return 0;
  };
  const left = box.x * view.zoom + view.x;
  const top = box.y * view.zoom + view.y;
  const dx = shift(left, left + box.width * view.zoom, page.width);
  const dy = shift(top, top + box.height * view.zoom, page.height);
  return dx === 0 && dy === 0 ? view : { ...view, x: Math.round(view.x + dx), y: Math.round(view.y + dy) };
}

/** The view zoomed by a factor about a point of the page, which stays where it is. */
export function zoomedAt(view: View, factor: number, at: { readonly x: number; readonly y: number }): View {
  const zoom = Math.min(MOST_ZOOM, Math.max(LEAST_ZOOM, view.zoom * factor));
  const by = zoom / view.zoom;
  return { zoom, x: Math.round(at.x - (at.x - view.x) * by), y: Math.round(at.y - (at.y - view.y) * by) };
}

/** The smallest box round all of some boxes; `null` for none. */
export function boundsOf(boxes: Iterable<Box>): Box | null {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const { x, y, width, height } of boxes) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x + width);
    bottom = Math.max(bottom, y + height);
  }
  return left > right ? null : { x: left, y: top, width: right - left, height: bottom - top };
}

/** True where `outer` holds all of `inner`. */
export function holds(outer: Box, inner: Box): boolean {
  return (
    outer.x <= inner.x &&
    outer.y <= inner.y &&
    outer.x + outer.width >= inner.x + inner.width &&
    outer.y + outer.height >= inner.y + inner.height
  );
}

/** So near to an edge, page pixels, a drag pulls the drawing along. */
const EDGE = 36;
const PULL_MOST = 14;

/** How far a drag at a point of the page shifts the view in one frame: the nearer to the edge, the faster. */
export function edgePull(
  at: { readonly x: number; readonly y: number },
  page: Size,
): { readonly x: number; readonly y: number } {
  const along = (value: number, length: number): number => {
    if (value < EDGE) return Math.round(Math.min(1, (EDGE - value) / EDGE) * PULL_MOST);
    if (value > length - EDGE) return -Math.round(Math.min(1, (value - length + EDGE) / EDGE) * PULL_MOST);
    return 0;
  };
  return { x: along(at.x, page.width), y: along(at.y, page.height) };
}
