import { contactKey } from "../../graph/contacts.ts";
import type { PartId } from "../../graph/harness.ts";
import type { Scene } from "../../layout/scene.ts";
import { type About, type Finding, SEVERITIES } from "../../rules/rule.ts";
import type { Box } from "./hit-model.ts";

/** A severity's mark on the drawing, beside what its findings are about. The most severe comes first. */
export type FindingMark = {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly findings: readonly Finding[];
};

/** Centre of a mark from the edge of the housing it stands beside, and above a symbol's contact. */
const BESIDE = 12;
const ABOVE = 12;
/** From a loose end's ring. */
const BEYOND = 18;

/**
 * Where the findings that nobody has waived are marked. Each is marked once, at the first place it is about;
 * findings about one place share a mark.
 */
export function marksOf(scene: Scene, findings: readonly Finding[]): readonly FindingMark[] {
  const places = new Map<string, { x: number; y: number; findings: Finding[] }>();
  for (const finding of findings) {
    const about = finding.about[0];
    if (finding.waiver || !about) continue;
    const spot = markSpot(scene, about);
    if (!spot) continue;
    const key = keyOf(about);
    const known = places.get(key);
    if (known) known.findings.push(finding);
    else places.set(key, { ...spot, findings: [finding] });
  }
  return [...places].map(([key, place]) => ({
    key,
    ...place,
    findings: worstFirst(place.findings),
  }));
}

/**
 * Marks for a view so far off that those of one part would lie on each other: one for each part, at its top right
 * corner, and those of wires as they are.
 */
export function farMarks(scene: Scene, marks: readonly FindingMark[]): readonly FindingMark[] {
  const byPart = new Map<string, Finding[]>();
  const far: FindingMark[] = [];
  for (const mark of marks) {
    const about = mark.findings[0]?.about[0];
    if (!about || "wire" in about) {
      far.push(mark);
      continue;
    }
    const known = byPart.get(about.part);
    if (known) known.push(...mark.findings);
    else byPart.set(about.part, [...mark.findings]);
  }
  for (const [part, findings] of byPart) {
    const placed = scene.parts.get(part as PartId);
    if (!placed) continue;
    far.push({ key: part, x: placed.x + placed.shape.width, y: placed.y, findings: worstFirst(findings) });
  }
  return far;
}

function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity));
}

export function keyOf(about: About): string {
  if ("wire" in about) return about.wire;
  return "contact" in about ? contactKey(about.part, about.contact) : about.part;
}

function markSpot(scene: Scene, about: About): { x: number; y: number } | null {
  if ("wire" in about) return onWire(scene, about);
  const placed = scene.parts.get(about.part);
  if (!placed) return null;
  if (!("contact" in about)) return { x: placed.x + placed.shape.width - 2, y: placed.y + 2 };
  const port = placed.shape.ports.find((one) => one.contact === about.contact);
  if (!port) return null;
  if (placed.part.kind === "connector" || placed.part.kind === "module") {
    // On the side that no wire leaves from: it covers neither the contact nor a wire's label.
    const x = port.side === "left" ? placed.shape.width + BESIDE : -BESIDE;
    return { x: placed.x + x, y: placed.y + port.y };
  }
  return { x: placed.x + port.x, y: placed.y + port.y - ABOVE };
}

/**
 * Beyond the loose end, where there is one, since that is most likely the trouble; or else in the middle of the
 * longest straight piece, where a mark is least likely to cover a label.
 */
function onWire(scene: Scene, about: Extract<About, { wire: unknown }>): { x: number; y: number } | null {
  const placed = scene.wires.get(about.wire);
  if (!placed) return null;
  const { path, loose } = placed;
  if (loose) {
    const rightwards = loose.x >= path[0]! && loose.x >= path[path.length - 2]!;
    return { x: loose.x + (rightwards ? BEYOND : -BEYOND), y: loose.y };
  }
  let best = { x: path[0]!, y: path[1]! };
  let longest = -1;
  for (let i = 0; i + 3 < path.length; i += 2) {
    const length = Math.abs(path[i + 2]! - path[i]!) + Math.abs(path[i + 3]! - path[i + 1]!);
    if (length <= longest) continue;
    longest = length;
    best = { x: (path[i]! + path[i + 2]!) / 2, y: (path[i + 1]! + path[i + 3]!) / 2 };
  }
  return best;
}

/** The piece of the drawing that shows something in its surroundings; `null` if it is not on the drawing. */
export function boxOfAbout(scene: Scene, about: About): Box | null {
  if ("wire" in about) {
    const path = scene.wires.get(about.wire)?.path;
    if (!path) return null;
    const xs = path.filter((_, index) => index % 2 === 0);
    const ys = path.filter((_, index) => index % 2 === 1);
    const [x, y] = [Math.min(...xs), Math.min(...ys)];
    return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
  }
  const placed = scene.parts.get(about.part);
  if (!placed) return null;
  const { width, height } = placed.shape;
  const port =
    "contact" in about ? placed.shape.ports.find((one) => one.contact === about.contact) : undefined;
  if (!port) return { x: placed.x, y: placed.y, width, height };
  return { x: placed.x, y: placed.y + port.y - 12, width, height: 24 };
}
