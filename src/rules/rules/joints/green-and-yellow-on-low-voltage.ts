import type { Colour, End, Harness } from "../../../graph/harness.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "green-and-yellow-on-low-voltage",
    group: "joints",
    severity: "tidy",
    summary:
      "In a vehicle with high voltage or mains, green and yellow together are kept for protective earth.",
    source: "IEC 60757:2021 §5.1; IEC 60445",
    reads: [...NAMES, "wiring", "labels", "settings"],
    fixable: false,
  },
  *check({ harness }) {
    if (harness.settings.vehicle.highVoltage !== "yes") return;
    for (const wire of Object.values(harness.wires)) {
      if (!isGreenAndYellow(wire.colour) || wire.label !== "") continue;
      if (wire.ends.some((end) => isVehiclesOwn(harness, end))) continue;
      yield {
        message: `${sayWire(wire)} has the colours of protective earth, in a vehicle with high voltage or mains aboard.`,
        consequence: "Somebody takes it for protective earth, or protective earth for a lead of low voltage.",
        remedy: "Use another colour, or put a marker with words of its own on both ends.",
        about: [{ wire: wire.id }],
      };
    }
  },
});

function isGreenAndYellow(colour: Colour | null): boolean {
  if (!colour) return false;
  const { base, tracer } = colour;
  return base === "GNYE" || (base === "GN" && tracer === "YE") || (base === "YE" && tracer === "GN");
}

/** A lead that the vehicle's maker has laid in this colour is not the fitter's to change. */
function isVehiclesOwn({ parts }: Harness, end: End): boolean {
  const part = end === "loose" ? undefined : parts[end.part];
  if (end === "loose" || part?.kind !== "connector" || part.belongsTo.side !== "vehicle") return false;
  return isGreenAndYellow(part.cavities[end.contact - 1]?.lead?.colour ?? null);
}
