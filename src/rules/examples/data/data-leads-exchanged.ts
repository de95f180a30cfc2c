import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .module("A1", { role: "receiver", rows: { "D+": "usb-data-plus GN", "D-": "usb-data-minus WH" } })
    .module("A2", { role: "other", rows: { "D+": "usb-data-plus GN", "D-": "usb-data-minus WH" } });

export default defineExample({
  page: [
    "USB and other two-lead data lines tell their halves apart by plus and minus. With the two exchanged a telephone still charges, for its feed comes by other leads, but no data passes.",
  ],
  trips: () => boxes().wire("A1.D+", "A2.D-").wire("A1.D-", "A2.D+"),
  quiet: () => boxes().wire("A1.D+", "A2.D+").wire("A1.D-", "A2.D-"),
  quietBecause: "Plus goes to plus, and minus to minus.",
});
