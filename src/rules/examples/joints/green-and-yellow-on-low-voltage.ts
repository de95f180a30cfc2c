import { defineExample } from "../example.ts";
import { lamp, SEALED } from "./lamp.ts";

const GREEN = { colour: { base: "GN", tracer: "YE" } } as const;

export default defineExample({
  page: [
    "Green and yellow together are kept for protective earth by an international standard. Makers of cars use the pair freely, which does no harm as long as nothing above low voltage is aboard.",
    "Where a vehicle has a traction battery or mains, take another colour for new leads, or mark them. The rule asks only where the settings say so.",
  ],
  trips: () => lamp(SEALED, {}, GREEN).settings({ vehicle: { highVoltage: "yes", lamps: "unknown" } }),
  quiet: () => lamp(SEALED, {}, GREEN).settings({ vehicle: { highVoltage: "no", lamps: "unknown" } }),
  quietBecause: "There is no high voltage in this vehicle.",
});
