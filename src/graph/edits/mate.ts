import type { Connector, Harness, PartId } from "../harness.ts";
import { type Edit, group, type Refused, refused } from "./edit.ts";

/**
 * Plugs two connectors together, cavity by cavity; what either was plugged to before is unplugged.
 * Refuses what cannot be pushed together: two of one gender, shells that differ, counts that differ.
 */
export function mate(harness: Harness, a: PartId, b: PartId): Edit | Refused {
  const left = harness.parts[a];
  const right = harness.parts[b];
  if (left?.kind !== "connector" || right?.kind !== "connector")
    return refused("only two connectors can be plugged together");
  if (a === b) return refused("a connector cannot be plugged into itself");
  const names = `${left.designation} and ${right.designation}`;
  if (left.matedWith === b && right.matedWith === a) return refused(`${names} are plugged together already`);
  if (left.gender === right.gender && left.gender !== "unknown")
    return refused(`${names} are both ${left.gender}s`);
  if (left.shell && right.shell && left.shell !== right.shell)
    return refused(`${names} have different shells: ${left.shell}, ${right.shell}`);
  if (left.cavities.length !== right.cavities.length)
    return refused(`${names} have ${left.cavities.length} and ${right.cavities.length} cavities`);
  const pair = new Set([a, b]);
  return group(`plug ${left.designation} into ${right.designation}`, [
    ...partings(harness, pair),
    { kind: "change-part", part: a, changes: { matedWith: b } },
    { kind: "change-part", part: b, changes: { matedWith: a } },
  ]);
}

/** Pulls a connector from what it is plugged to. */
export function unmate(harness: Harness, id: PartId): Edit | Refused {
  const part = harness.parts[id];
  if (part?.kind !== "connector") return refused("only a connector can be unplugged");
  const edits = partings(harness, new Set([id]));
  if (part.matedWith) edits.push({ kind: "change-part", part: id, changes: { matedWith: null } });
  if (!edits.length) return refused(`${part.designation} is not plugged to anything`);
  return group(`unplug ${part.designation}`, edits);
}

/** Others that name one of these as their mate let go of it: a mating may be written on one side only. */
function partings(harness: Harness, ids: ReadonlySet<PartId>): Edit[] {
  const holds = (part: Connector) => part.matedWith !== null && ids.has(part.matedWith) && !ids.has(part.id);
  return Object.values(harness.parts).flatMap((part): Edit[] =>
    part.kind === "connector" && holds(part)
      ? [{ kind: "change-part", part: part.id, changes: { matedWith: null } }]
      : [],
  );
}
