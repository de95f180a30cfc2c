import { type ContactKey, contactsOf } from "../../../../src/graph/contacts.ts";
import { apply } from "../../../../src/graph/edits/apply.ts";
import type {
  Cavity,
  End,
  Harness,
  Part,
  PartId,
  RunId,
  Wire,
  WireId,
} from "../../../../src/graph/harness.ts";
import { makeWire } from "../../../../src/graph/make.ts";
import { Dice, randomEdit, randomHarness } from "../../../graph/random.ts";

const NAMES = [
  "constant-feed",
  "constant-feed",
  "switched-feed",
  "ground",
  "ground",
  "illumination",
  "reverse",
  "amplifier-turn-on",
  "parking-brake",
  "indicator-left",
  "unknown",
];

/** A random harness with batteries, boxes, relays and runs, of several pieces, in most of which current flows. */
export function livelyHarness(seed: number, size = 24): { dice: Dice; harness: Harness } {
  const dice = new Dice(seed);
  const { parts, ...rest } = randomHarness(dice, size);
  const lively = Object.values(parts).map((part) => [part.id, livelyPart(dice, part)]);
  return { dice, harness: moreWires(dice, { ...rest, parts: Object.fromEntries(lively) }, size) };
}

/** Random wires alone leave most parts alone: some more, between contacts that are there. */
function moreWires(dice: Dice, harness: Harness, count: number): Harness {
  const ends = Object.values(harness.parts).flatMap((part) =>
    contactsOf(part).map(({ number }) => ({ part: part.id, contact: number })),
  );
  if (ends.length < 2) return harness;
  const wires = { ...harness.wires };
  for (let index = 0; index < count; index++) {
    const id = `w:more${index}` as WireId;
    wires[id] = makeWire(id, `M${index}`, [dice.pick(ends), dice.pick(ends)], wireFigures(dice, harness));
  }
  return { ...harness, wires };
}

function wireFigures(dice: Dice, harness: Harness): Partial<Wire> {
  return {
    area_mm2: dice.pick(["unknown", 0.35, 0.75, 4]),
    length_m: dice.pick(["unknown", 0, 0.3, 2.5]),
    runs: dice.some(Object.keys(harness.runs) as RunId[], 0.3),
  };
}

export function livelyPart(dice: Dice, part: Part): Part {
  switch (part.kind) {
    case "connector": {
      const side = dice.chance(0.6) ? "vehicle" : "equipment";
      const cavities = part.cavities.map((one) => livelyCavity(dice, one));
      return { ...part, cavities, belongsTo: { ...part.belongsTo, side } };
    }
    case "module":
      return {
        ...part,
        cavities: part.cavities.map((one) => livelyCavity(dice, one)),
        wakes: dice.pick(["by-lead", "by-signal", "unknown"]),
        standby_A: dice.pick(["unknown", 0.02]),
      };
    case "load":
      return {
        ...part,
        current_A: dice.pick(["unknown", 0, 0.5, 8]),
        behaviour: dice.pick(["unknown", "resistance", "constant-current", "constant-power", "filament"]),
        polarised: dice.chance(0.4),
        standby_A: dice.pick(["unknown", 0, 0.01]),
      };
    case "fuse":
      return { ...part, rating_A: dice.pick(["unknown", 5, 30]) };
    case "relay":
      return { ...part, suppression: dice.pick(["none", "diode", "resistor"]) };
    case "resistor":
      return { ...part, resistance_ohm: dice.pick(["unknown", 0, 120]) };
    case "switch":
      return { ...part, operatedBy: dice.pick(["hand", "key", "lights", "reverse-gear", "isolator"]) };
    default:
      return part;
  }
}

function livelyCavity(dice: Dice, cavity: Cavity): Cavity {
  return {
    ...cavity,
    function: dice.pick(NAMES),
    direction: dice.pick(["gives", "takes", "both", "unknown"]),
    use: dice.chance(0.1) ? "plugged" : "expected",
    current_A: dice.pick(["unknown", 0, 0.2, 3, 40]),
    fuse_A: dice.pick(["unknown", null, 10]),
  };
}

/** An edit that means something to a circuit; the harness itself where the dice fell on one that cannot be made. */
export function livelyEdit(dice: Dice, harness: Harness): Harness {
  const wires = Object.values(harness.wires);
  const parts = Object.values(harness.parts);
  if (parts.length === 0 || wires.length === 0) return harness;
  const wire = dice.pick(wires);
  const part = dice.pick(parts);
  const changed = (changes: Partial<Wire>): Harness => ({
    ...harness,
    wires: { ...harness.wires, [wire.id]: { ...wire, ...changes } },
  });
  const makers: readonly (() => Harness)[] = [
    () => changed(wireFigures(dice, harness)),
    () => {
      const count = contactsOf(part).length;
      const end: End = count ? { part: part.id, contact: 1 + dice.below(count) } : "loose";
      return changed({ ends: dice.chance(0.5) ? [end, wire.ends[1]] : [wire.ends[0], end] });
    },
    () => {
      const { [wire.id]: _gone, ...left } = harness.wires;
      return { ...harness, wires: left };
    },
    () => ({ ...harness, parts: { ...harness.parts, [part.id]: livelyPart(dice, part) } }),
    () => moreWires(dice, harness, 1),
    () => ({
      ...harness,
      runs: Object.fromEntries(
        Object.values(harness.runs).map((run) => [run.id, { ...run, length_m: dice.pick([1, "unknown"]) }]),
      ),
    }),
    () => ({
      ...harness,
      settings: {
        ...harness.settings,
        ambient_degC: dice.pick([20, 40]),
        electrical: {
          ...harness.settings.electrical,
          rest_V: dice.pick(["unknown", 12.4]),
          ampacityBook: dice.pick(["unknown", harness.settings.electrical.ampacityBook]),
        },
      },
    }),
    () => {
      const edit = randomEdit(dice, harness);
      const result = "ok" in edit ? null : apply(harness, edit);
      return result?.ok ? result.harness : harness;
    },
  ];
  return dice.pick(makers)();
}

export function contactsIn(harness: Harness): readonly ContactKey[] {
  return Object.values(harness.parts).flatMap((part) =>
    contactsOf(part).map(({ number }): ContactKey => `${part.id}#${number}`),
  );
}

export const partsOfKind = (harness: Harness, kind: Part["kind"]): readonly PartId[] =>
  Object.values(harness.parts)
    .filter((part) => part.kind === kind)
    .map(({ id }) => id);
