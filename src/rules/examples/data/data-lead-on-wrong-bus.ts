import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build().vehicle("X1", { "1": "k-line WH/VT", "2": "lin" }).unit("X2", { "5": "lin VT", "6": "data" });

export default defineExample({
  page: [
    "A vehicle has several buses: CAN on two leads, LIN and the K line on one. They differ in volts and speed, so that a module on the wrong one hears nothing and disturbs those who belong there.",
    "Where a chart says only data, the drawing cannot judge it: look the lead up in the module's papers.",
  ],
  trips: () => boxes().wire("X1.1", "X2.5"),
  quiet: () => boxes().wire("X1.2", "X2.5").wire("X1.1", "X2.6"),
  quietBecause: "LIN goes to LIN, and the lead that is only called data may belong to the K line.",
});
