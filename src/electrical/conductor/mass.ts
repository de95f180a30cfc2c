import { type Answer, digits, isKnown } from "../figure.ts";
import { type InsulationWall, outsideDiameter } from "./insulation.ts";
import { MATERIALS, type Material } from "./material.ts";

/** Soft PVC as wires are covered with, g/cm³. */
const PVC_g_per_cm3 = 1.35;
/** Metal's share of the circle that the strands take up. */
const STRAND_FILL = 0.75;
/** Strands are longer than the wire by their lay. */
const LAY = 1.02;

/**
 * Mass of one metre of insulated wire: metal plus the ring of insulation around the strands.
 * @param area_mm2 metal cross-section, mm²
 * @returns g/m, or why it is not known (no outside diameter for that size)
 * @throws RangeError for an area not in 0.001 to 1 000 mm²
 */
export function massPerMetre(area_mm2: number, material: Material, wall: InsulationWall): Answer {
  const outside = outsideDiameter(area_mm2, wall);
  if (!isKnown(outside)) return outside;
  const { density_g_per_cm3, name, source } = MATERIALS[material];
  const metal_g = area_mm2 * density_g_per_cm3 * LAY;
  const ring_mm2 = Math.max(0, (Math.PI / 4) * outside.value ** 2 - area_mm2 / STRAND_FILL);
  const value = metal_g + ring_mm2 * PVC_g_per_cm3;
  return {
    value,
    unit: "g/m",
    formula: `${digits(area_mm2)} mm² × ${density_g_per_cm3} g/cm³ × ${LAY} + ${digits(ring_mm2)} mm² × ${PVC_g_per_cm3} g/cm³ = ${digits(value, 3)} g/m of ${name}`,
    table: outside.table,
    source,
    doubt:
      "insulation reckoned as PVC of 1.35 g/cm³ around strands that fill 75 % of their circle, from memory",
  };
}
