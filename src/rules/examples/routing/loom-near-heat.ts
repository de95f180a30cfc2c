import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "Close to an exhaust, a heater or a turbocharger common insulation softens, and the copper comes through it.",
    "A heat sleeve, conduit for 125 °C, or wire that is made for such heat all do. Another way round is better still.",
  ],
  trips: () => loom({ near: ["heat"], covering: "cloth-tape" }),
  quiet: () => loom({ near: ["heat"], covering: "heat-sleeve" }),
  quietBecause: "A heat sleeve covers the loom.",
});
