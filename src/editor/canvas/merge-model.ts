import type { Ink, PathCommand, Primitive, Stroke } from "../../layout/drawing.ts";

/** What one SVG element shows: an outline with one look, or a line of text. */
export type Mark =
  | { readonly kind: "outline"; readonly d: string; readonly fill: Ink; readonly stroke: Stroke | null }
  | {
      readonly kind: "text";
      readonly item: Extract<Primitive, { kind: "text" }>;
      readonly dx: number;
      readonly dy: number;
    };

/**
 * Turns primitives into few SVG elements: neighbours in the list with one look become one path. The order is
 * kept, so nothing that was covered comes to lie on top. Texts cannot be joined.
 */
export function mergeMarks(items: readonly Primitive[]): readonly Mark[] {
  const marks: Mark[] = [];
  let d: string[] = [];
  let look: { fill: Ink; stroke: Stroke | null } | null = null;
  const flush = () => {
    if (look && d.length) marks.push({ kind: "outline", d: d.join(""), ...look });
    d = [];
    look = null;
  };
  const outline = (text: string, fill: Ink, stroke: Stroke | null) => {
    // Filled shapes stay apart: where two overlap, one path would fill them by the even-odd of both.
    if (!look || look.fill !== fill || fill !== "none" || !sameStroke(look.stroke, stroke)) {
      flush();
      look = { fill, stroke };
    }
    d.push(text);
  };
  const walk = (list: readonly Primitive[], dx: number, dy: number) => {
    for (const item of list) {
      if (item.kind === "group") walk(item.items, dx + item.x, dy + item.y);
      else if (item.kind === "text") {
        flush();
        marks.push({ kind: "text", item, dx, dy });
      } else if (item.kind === "line") {
        const { x1, y1, x2, y2 } = item;
        outline(`M${n(x1 + dx)} ${n(y1 + dy)}L${n(x2 + dx)} ${n(y2 + dy)}`, "none", item.stroke);
      } else if (item.kind === "path") {
        outline(commandText(item.commands, dx, dy), item.fill ?? "none", item.stroke ?? null);
      } else if (item.kind === "rectangle") {
        outline(rectangleText(item, dx, dy), item.fill ?? "none", item.stroke ?? null);
      } else
        outline(circleText(item.x + dx, item.y + dy, item.radius), item.fill ?? "none", item.stroke ?? null);
    }
  };
  walk(items, 0, 0);
  flush();
  return marks;
}

function sameStroke(a: Stroke | null, b: Stroke | null): boolean {
  if (a === b) return true;
  if (!a || !b) return false;
  return (
    a.colour === b.colour &&
    a.width === b.width &&
    (a.cap ?? "butt") === (b.cap ?? "butt") &&
    (a.dash ?? []).join() === (b.dash ?? []).join()
  );
}

/** Two decimals are finer than any screen shows. */
function n(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function commandText(commands: readonly PathCommand[], dx: number, dy: number): string {
  let text = "";
  for (const command of commands) {
    if (command[0] === "Z") text += "Z";
    else if (command[0] === "C") {
      const [, x1, y1, x2, y2, x, y] = command;
      text += `C${n(x1 + dx)} ${n(y1 + dy)} ${n(x2 + dx)} ${n(y2 + dy)} ${n(x + dx)} ${n(y + dy)}`;
    } else text += `${command[0]}${n(command[1] + dx)} ${n(command[2] + dy)}`;
  }
  return text;
}

function rectangleText(item: Extract<Primitive, { kind: "rectangle" }>, dx: number, dy: number): string {
  const { width, height } = item;
  const x = item.x + dx;
  const y = item.y + dy;
  const r = Math.min(item.radius ?? 0, width / 2, height / 2);
  if (!r) return `M${n(x)} ${n(y)}h${n(width)}v${n(height)}h${n(-width)}Z`;
  const arc = (ax: number, ay: number) => `a${n(r)} ${n(r)} 0 0 1 ${n(ax)} ${n(ay)}`;
  return (
    `M${n(x + r)} ${n(y)}h${n(width - 2 * r)}${arc(r, r)}v${n(height - 2 * r)}${arc(-r, r)}` +
    `h${n(2 * r - width)}${arc(-r, -r)}v${n(2 * r - height)}${arc(r, -r)}Z`
  );
}

function circleText(x: number, y: number, radius: number): string {
  const r = n(radius);
  return `M${n(x - radius)} ${n(y)}a${r} ${r} 0 1 1 ${n(2 * radius)} 0a${r} ${r} 0 1 1 ${n(-2 * radius)} 0Z`;
}
