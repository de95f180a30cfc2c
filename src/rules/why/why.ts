import { nameKind } from "../../catalogue/describe.ts";
import { type ContactKey, contactKey, keyOfEnd, keysOf, refOfKey } from "../../graph/contacts.ts";
import type { Harness, PartId, WireId } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import { type Context, contextOf } from "../context.ts";
import type { About, Finding } from "../rule.ts";
import { nameAndPurpose, nameOf, sayStates, sayWire } from "../words.ts";
import { type Link, linksOf, shortestWay } from "./ways.ts";

/** One step on a way: a contact, a wire or a part, as the drawing shows it. */
export type WhyStep = {
  readonly words: string;
  readonly at: About;
};

/** A way through the harness that shows how a finding comes about. */
export type WhyWay = {
  /** "How current reaches W7", "From X1.A4 to X2.3". */
  readonly title: string;
  readonly steps: readonly WhyStep[];
};

export type Why = {
  readonly ways: readonly WhyWay[];
  /** All that the ways touch, for the drawing. */
  readonly parts: readonly PartId[];
  readonly wires: readonly WireId[];
};

/** More ways than this tell a reader nothing more. */
const MOST_WAYS = 4;

/**
 * The ways that show how a finding comes about: from what feeds the place it is shown at, and from there to the
 * other things it is about. Made when a person asks for it.
 * @param traced of the same harness
 */
export function whyOf(harness: Harness, traced: Traced, finding: Pick<Finding, "about">): Why {
  const context = contextOf(harness, traced);
  const places = finding.about.map((about) => placeOf(context, about));
  const first = places[0];
  const ways: WhyWay[] = [];
  if (first) {
    const fed = feedWay(context, first);
    if (fed) ways.push(fed);
    for (const other of places.slice(1)) {
      if (ways.length >= MOST_WAYS) break;
      const way = between(context, first, other);
      if (way) ways.push(way);
    }
    if (!ways.length) ways.push(circuitOf(context, first));
  }
  const touched = ways.flatMap(({ steps }) => steps.map(({ at }) => at)).concat(finding.about);
  const wires = touched.flatMap((at) => ("wire" in at ? [at.wire] : []));
  const parts = touched.flatMap((at) => ("part" in at ? [at.part] : []));
  return { ways, parts: [...new Set(parts)], wires: [...new Set(wires)] };
}

/** Where a way may begin or end, and what is said of it. */
type Place = { readonly about: About; readonly keys: readonly ContactKey[]; readonly name: string };

function placeOf(context: Context, about: About): Place {
  const { parts, wires } = context.harness;
  if ("wire" in about) {
    const wire = wires[about.wire];
    const keys = (wire?.ends ?? []).flatMap((end) => keyOfEnd(end) ?? []);
    return { about, keys, name: wire ? sayWire(wire) : about.wire };
  }
  const part = parts[about.part];
  if ("contact" in about) {
    const point = context.points.pointAt(about.part, about.contact);
    const name = point ? nameAndPurpose(point) : sayPart(context, about.part);
    return { about, keys: part ? [contactKey(about.part, about.contact)] : [], name };
  }
  return { about, keys: part ? keysOf(part) : [], name: sayPart(context, about.part) };
}

/** From the source that hurts most to the place, through everything between. */
function feedWay(context: Context, place: Place): WhyWay | null {
  for (const key of place.keys) {
    const { part, contact } = refOfKey(key);
    const feed = context.feeds.feeds(context.points.circuitAt(part, contact))[0];
    if (!feed) continue;
    // What feeds a loose lead may be the very contact that it hangs on.
    if (place.keys.includes(feed.source.key) && !("wire" in place.about)) continue;
    const way = shortestWay(linksOf(context.harness, false), feed.source.key, new Set(place.keys));
    if (!way) continue;
    const steps = stepsOf(context, way);
    if ("wire" in place.about) steps.push(step(context, place.about));
    return {
      title: `How ${nameOf(feed.source)} reaches it, live ${sayStates(feed.live)}`,
      steps: unique(steps),
    };
  }
  return null;
}

function between(context: Context, one: Place, other: Place): WhyWay | null {
  const to = new Set(other.keys);
  for (const throughLoads of [false, true]) {
    const links = linksOf(context.harness, throughLoads);
    for (const key of one.keys) {
      const way = shortestWay(links, key, to);
      if (way && way.length > 1)
        return { title: `From ${one.name} to ${other.name}`, steps: unique(stepsOf(context, way)) };
    }
  }
  return null;
}

/** Nothing feeds it and it leads nowhere: what its circuit joins. */
function circuitOf(context: Context, place: Place): WhyWay {
  const steps: WhyStep[] = [step(context, place.about)];
  for (const key of place.keys) {
    const circuit = context.traced.circuitOf(key);
    for (const id of circuit?.wires ?? []) steps.push(step(context, { wire: id }));
    for (const other of circuit?.contacts ?? []) steps.push(step(context, refOfKey(other)));
  }
  return { title: `What ${place.name} is joined to`, steps: unique(steps) };
}

function stepsOf(
  context: Context,
  way: readonly { readonly at: ContactKey; readonly by: Link | null }[],
): WhyStep[] {
  const steps: WhyStep[] = [];
  for (const { at, by } of way) {
    if (by && "wire" in by) steps.push(step(context, { wire: by.wire }));
    else if (by) steps.push(step(context, { part: by.part }));
    const { part, contact } = refOfKey(at);
    const point = context.points.pointAt(part, contact);
    // A joint or a fuse is one step, not one for each of its sides.
    if (point && point.means.id !== "unknown") steps.push(step(context, { part, contact }));
  }
  return steps;
}

function step(context: Context, at: About): WhyStep {
  if ("wire" in at) {
    const wire = context.harness.wires[at.wire];
    const loose = wire?.ends.includes("loose") ? ", which ends loose" : "";
    return { at, words: wire ? `${sayWire(wire)}${loose}` : at.wire };
  }
  if (!("contact" in at)) return { at, words: sayPart(context, at.part) };
  const point = context.points.pointAt(at.part, at.contact);
  return { at, words: point ? nameAndPurpose(point) : sayPart(context, at.part) };
}

function sayPart(context: Context, id: PartId): string {
  const part = context.harness.parts[id];
  if (!part) return id;
  const rating = part.kind === "fuse" && part.rating_A !== "unknown" ? `, ${part.rating_A} A` : "";
  return `${nameKind(part.kind)} ${part.designation}${rating}`;
}

/** The same words one after the other are one step: a mated pair, a splice entered and left. */
function unique(steps: readonly WhyStep[]): readonly WhyStep[] {
  const said = new Set<string>();
  return steps.filter(({ words }) => !said.has(words) && said.add(words));
}
