import { sayColour } from "../catalogue/colours.ts";
import { nameKind } from "../catalogue/describe.ts";
import type { Point, PointCircuit } from "../electrical/points.ts";
import type { ContactKey } from "../graph/contacts.ts";
import { refOfKey } from "../graph/contacts.ts";
import type { Harness, Part, PartId } from "../graph/harness.ts";
import type { Traced } from "../graph/trace.ts";
import { type Look, lookAt } from "./look.ts";
import { byName, colourAt, compareNames, nameAndPurpose, nameOf, sayFeed, sayList } from "./words.ts";

/**
 * What a contact's circuit joins, and what feeds it, in words: "X1.A4 constant feed, red, is joined to
 * X2.12 constant feed, yellow, through splice XJ3. It is fed from X1.A4 …, at all times."
 * @returns one to three sentences; "" where there is no such contact
 */
export function sayCircuit(harness: Harness, traced: Traced, key: ContactKey): string {
  const part = traced.partOf(key);
  if (!part || !traced.circuitOf(key)) return "";
  const context = lookAt(harness, traced);
  const at = refOfKey(key);
  const circuit = context.points.circuitAt(at.part, at.contact);
  const point = context.points.pointAt(at.part, at.contact) ?? null;
  const others = point ? context.points.partners(point) : circuit.points;
  const joints = jointsOf(harness, circuit.circuit.contacts, part);
  const through = joints.length ? `, through ${joints}` : "";
  const subject = point ? apart(context, point) : `${nameKind(part.kind)} ${part.designation}`;
  const verb = subject.includes(",") ? ", is" : " is";
  const sentences = [
    others.length
      ? point
        ? `${subject}${verb} joined to ${sayList([...others].sort(byName).map((other) => apart(context, other)))}${through}.`
        : `${subject} joins ${sayList([...others].sort(byName).map((other) => apart(context, other)))}${through}.`
      : circuit.caps.length
        ? `${subject}${verb} a spare under ${capNames(harness, circuit.caps)}.`
        : `${subject}${verb} joined to nothing.`,
  ];
  if (others.length && circuit.caps.length)
    sentences.push(`A lead of it ends under ${capNames(harness, circuit.caps)}.`);
  if (circuit.circuit.loose.length) {
    const wires = circuit.circuit.loose.map((id) => harness.wires[id]?.designation ?? id);
    sentences.push(`${sayList(wires.sort(compareNames))} ${wires.length === 1 ? "ends" : "end"} loose.`);
  }
  const feeding = sayFeeds(context, circuit, point?.key ?? key);
  return [...sentences, ...feeding].map(capital).join(" ");
}

/** "X1.A4 constant feed, red". */
function apart(context: Look, point: Point): string {
  const colour = colourAt(context, point);
  return colour ? `${nameAndPurpose(point)}, ${sayColour(colour)}` : nameAndPurpose(point);
}

function sayFeeds(context: Look, circuit: PointCircuit, own: ContactKey): string[] {
  const feeds = [...context.feeds.feeds(circuit)].sort((a, b) => byName(a.source, b.source));
  if (feeds.length) {
    const only = feeds.length === 1 && feeds[0]!.source.key === own;
    if (!only)
      return [
        `It is fed from ${sayList(
          feeds.map((feed) => sayFeed(context, feed)),
          4,
        )}.`,
      ];
    return [];
  }
  const grounds = context.grounds.feeds(circuit).map((feed) => feed.source);
  const elsewhere = grounds.filter((ground) => !circuit.points.includes(ground));
  return elsewhere.length ? [`It reaches ground at ${sayList(elsewhere.sort(byName).map(nameOf), 4)}.`] : [];
}

/** "splice XJ3", "splices XJ3 and XJ4": the joints of a circuit but the one that is spoken of. */
function jointsOf(harness: Harness, contacts: readonly ContactKey[], but: Part): string {
  const names = new Set<string>();
  for (const key of contacts) {
    const part = harness.parts[refOfKey(key).part];
    if (part?.kind === "splice" && part !== but) names.add(part.designation);
  }
  if (!names.size) return "";
  return `${names.size === 1 ? "splice" : "splices"} ${sayList([...names].sort(compareNames))}`;
}

function capNames(harness: Harness, caps: readonly PartId[]): string {
  const names = caps.map((id) => harness.parts[id]?.designation ?? id).sort(compareNames);
  return `${names.length === 1 ? "cap" : "caps"} ${sayList(names)}`;
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
