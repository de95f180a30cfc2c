import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const radio = () =>
  build()
    .vehicle("X1", {
      A4: "constant-feed RD 1.5 fuse:15",
      A7: "switched-feed YE 0.75 fuse:10",
      A8: "ground BN 1.5",
    })
    .unit("X2", { "1": "constant-feed YE 1.5", "2": "switched-feed RD 0.75", "3": "ground BK 1.5" })
    .wire("X1.A4", "X2.1", "RD")
    .wire("X1.A8", "X2.3", "BN");

export default defineExample({
  page: [
    "A unit does not work without certain leads: its feeds and its ground, both halves of a speaker pair in use, both of a data pair. One that joins nothing is said here.",
    "Where the vehicle has no such lead, it has to come from elsewhere: the fuse box, or a module that reads the data bus.",
  ],
  trips: () => radio().wire("X1.A7", "XC1", "YE"),
  quiet: () => radio().wire("X1.A7", "X2.2", "YE"),
  quietBecause: "Every lead that the unit needs is joined.",
});
