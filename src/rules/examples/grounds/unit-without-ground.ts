import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const unit = () =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 1.5 fuse:15" })
    .unit("X2", { "1": "constant-feed YE 1.5", "2": "ground BK 1.5" })
    .wire("X1.1", "X2.1");

export default defineExample({
  page: [
    "Current that goes into a unit has to come out again, back to the battery through the body of the vehicle. Without a ground the unit is dead.",
    "Or it is not dead, and that is worse: then its current has found a way through a shield or an antenna lead, which is not made for it.",
  ],
  trips: () => unit().path("X2.2", "XC1"),
  quiet: () => unit().part("ground", "XE1", { surface: "bare-metal" }).wire("X2.2", "XE1"),
  quietBecause: "The unit has a lead of its own to bare metal.",
});
