import { nameContact } from "../../catalogue/describe.ts";
import type { Point } from "../../electrical/points.ts";
import { type ContactKey, contactKey, refOfKey } from "../../graph/contacts.ts";
import { type Edit, group, type Refused, refused } from "../../graph/edits/edit.ts";
import { exchange } from "../../graph/edits/lead.ts";
import type { Harness } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { type Fix, fixWith } from "../rule.ts";

type Places = readonly [ContactKey, ContactKey];

/**
 * Exchanges what two contacts are joined to. Where both leads go to a joint of their own, they change places
 * at the joints, so that each cavity keeps the lead its chart gives it; else they change cavities.
 */
export function exchangeFix(context: Context, a: Point, b: Point): Fix | null {
  const places = partingPlaces(context, a, b);
  if (!places) return null;
  const [left, right] = places.map((key) => nameOfPlace(context, key));
  return fixWith(`Exchange the two leads at ${left} and ${right}`, () =>
    exchange(context.harness, refOfKey(places[0]), refOfKey(places[1])),
  );
}

/** The same for several pairs at once, as one step. */
export function exchangeAll(
  context: Context,
  pairs: readonly (readonly [Point, Point])[],
  label: string,
): Fix | null {
  const all = pairs.map(([a, b]) => partingPlaces(context, a, b));
  if (!all.every((places) => places !== null)) return null;
  // Two exchanges that move one wire would each undo what the other did.
  const wires = all.flat().flatMap((key) => context.traced.wiresAt(key));
  if (new Set(wires).size !== wires.length) return null;
  const name = label.charAt(0).toLowerCase() + label.slice(1);
  return fixWith(label, () => inTurn(context.harness, all, name));
}

function inTurn(harness: Harness, all: readonly Places[], name: string): Edit | Refused {
  const edits: Edit[] = [];
  for (const [left, right] of all) {
    const edit = exchange(harness, refOfKey(left), refOfKey(right));
    if ("ok" in edit) return edit;
    edits.push(edit);
  }
  return edits.length ? group(name, edits) : refused("there is nothing to exchange");
}

/** "XJ1.2" says no more than "XJ1" to a person who stands before the joint. */
function nameOfPlace(context: Context, key: ContactKey): string {
  const part = context.traced.partOf(key);
  return part?.kind === "splice" ? part.designation : nameContact(context.harness, key);
}

function partingPlaces(context: Context, a: Point, b: Point): Places | null {
  const left = landing(context, a);
  const right = landing(context, b);
  if (!left || !right || left === right) return null;
  const jointA = jointOf(context, left);
  const jointB = jointOf(context, right);
  return jointA && jointB && jointA !== jointB ? [jointA, jointB] : [left, right];
}

/** Where its wires land: on itself, or on what it is mated with. */
function landing(context: Context, point: Point): ContactKey | null {
  return point.landings.find((key) => context.traced.wiresAt(key).length > 0) ?? null;
}

/** The side of a joint that holds this contact's lead and nothing else. */
function jointOf(context: Context, key: ContactKey): ContactKey | null {
  const [wire, second] = context.traced.wiresAt(key);
  if (!wire || second) return null;
  for (const end of wire.ends) {
    if (end === "loose") continue;
    const far = contactKey(end.part, end.contact);
    if (far === key) continue;
    const alone = context.traced.wiresAt(far).length === 1;
    return alone && context.harness.parts[end.part]?.kind === "splice" ? far : null;
  }
  return null;
}
