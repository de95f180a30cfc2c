import { type Answer, digits, type Figure } from "../figure.ts";
import { requirePositive } from "../require.ts";
import { MOST_CIRCLES, packCircles } from "./pack/pack.ts";

export type BundleDiameter = {
  /** The smallest circle found around the wires; unknown for more wires than are packed. */
  readonly packed: Answer;
  /** 1.2 √Σd². */
  readonly rule: Figure;
  /** What to order sleeves and grommets by: the larger of the two. */
  readonly reckoned: Figure;
};

/** Origin of the number: none was found. It is below what is possible for 2 to 6, 9 and 10 equal wires. */
const RULE_FACTOR = 1.2;

/**
 * Outside diameter of a bundle of any mix of wires.
 * @param diameters_mm outside diameters of the wires, each above 0; an empty list is a bundle of 0 mm
 * @throws RangeError for NaN or a diameter not above 0
 */
export function bundleDiameter(diameters_mm: readonly number[]): BundleDiameter {
  const rule = ruleOfThumb(diameters_mm);
  const packed = packedDiameter(diameters_mm);
  if ("unknown" in packed) return { packed, rule, reckoned: { ...rule, doubt: packed.unknown } };
  return { packed, rule, reckoned: packed.value > rule.value || diameters_mm.length < 2 ? packed : rule };
}

/**
 * The trade's rule: D = 1.2 √Σd².
 * @throws RangeError for NaN or a diameter not above 0
 * @source several web calculators; no standard or handbook was found behind it
 */
export function ruleOfThumb(diameters_mm: readonly number[]): Figure {
  for (const diameter_mm of diameters_mm) requirePositive("diameter_mm", diameter_mm);
  const squares_mm2 = diameters_mm.reduce((sum, diameter_mm) => sum + diameter_mm ** 2, 0);
  const value = RULE_FACTOR * Math.sqrt(squares_mm2);
  return {
    value,
    unit: "mm",
    formula: `D = 1.2 √Σd² = 1.2 √(${digits(squares_mm2)} mm²) = ${digits(value, 3)} mm`,
    table: null,
    source: "rule of thumb of several web calculators; no standard found behind it",
    doubt: "smaller than is possible for 2 to 6, 9 and 10 equal wires, and for many small mixes",
  };
}

function packedDiameter(diameters_mm: readonly number[]): Answer {
  if (diameters_mm.length > MOST_CIRCLES) {
    return {
      unknown: `${diameters_mm.length} wires are too many to pack (${MOST_CIRCLES}); the rule of thumb stands alone`,
    };
  }
  const { diameter_mm } = packCircles(diameters_mm);
  return {
    value: diameter_mm,
    unit: "mm",
    formula: `smallest circle found around ${sayMix(diameters_mm)} = ${digits(diameter_mm, 3)} mm`,
    table: null,
    source: "circles packed by search: laid into corners, then drawn together",
    doubt: "the tightest lay; by hand a bundle comes out looser",
  };
}

/** "2 × 3 mm, 4 × 1.9 mm", thick first. */
function sayMix(diameters_mm: readonly number[]): string {
  if (diameters_mm.length === 0) return "no wire";
  const counts = new Map<number, number>();
  for (const diameter_mm of diameters_mm) counts.set(diameter_mm, (counts.get(diameter_mm) ?? 0) + 1);
  return [...counts]
    .sort(([a], [b]) => b - a)
    .map(([diameter_mm, count]) => `${count} × ${digits(diameter_mm)} mm`)
    .join(", ");
}
