import { FUNCTIONS } from "../../src/catalogue/functions.ts";
import type { Cavity, Harness, Part } from "../../src/graph/harness.ts";
import { Dice, randomHarness } from "../graph/random.ts";

const COMMON = [
  "constant-feed",
  "switched-feed",
  "ground",
  "illumination",
  "parking-brake",
  "speaker-front-left-plus",
  "speaker-front-left-minus",
  "speaker-front-right-plus",
  "speaker-front-right-minus",
  "line-rear-left-signal",
];

function cavity(dice: Dice, old: Cavity): Cavity {
  return {
    ...old,
    function: dice.chance(0.7) ? dice.pick(COMMON) : dice.pick(FUNCTIONS).id,
    direction: dice.pick(["gives", "takes", "both", "none", "unknown"]),
    fuse_A: dice.pick([null, "unknown", 15]),
  };
}

/** Gives every part something to be right or wrong about. */
function meaningful(dice: Dice, part: Part): Part {
  switch (part.kind) {
    case "connector": {
      const form = dice.pick(["housing", "line-plug", "flying-leads"] as const);
      const side = dice.pick(["vehicle", "equipment"] as const);
      const cavities = part.cavities.map((one) => cavity(dice, one));
      return { ...part, cavities, form, belongsTo: { ...part.belongsTo, side } };
    }
    case "module":
      return {
        ...part,
        cavities: part.cavities.map((one) => cavity(dice, one)),
        outputs: dice.pick(["bridged", "common-negative", "none", "unknown"]),
        wakes: dice.pick(["by-lead", "by-signal", "unknown"]),
        feedsCrossed: dice.chance(0.2),
      };
    case "load":
      return { ...part, function: dice.pick(COMMON), polarised: dice.chance(0.5) };
    case "speaker":
      return { ...part, position: dice.pick(["front-left", "front-right", "other"]) };
    case "switch":
      return { ...part, operatedBy: dice.pick(["hand", "key", "lights", "reverse-gear"]) };
    case "resistor":
      return { ...part, resistance_ohm: dice.pick([10, 5000, "unknown"]) };
    default:
      return part;
  }
}

/** A random harness in which every part has something to be right or wrong about. */
export function telling(seed: number, size = 14): { dice: Dice; harness: Harness } {
  const dice = new Dice(seed);
  const { parts, ...rest } = randomHarness(dice, size);
  const made = Object.values(parts).map((part) => [part.id, meaningful(dice, part)]);
  return { dice, harness: { ...rest, parts: Object.fromEntries(made) } };
}
