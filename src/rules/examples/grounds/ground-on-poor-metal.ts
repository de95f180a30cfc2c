import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const unit = (surface: "painted" | "bare-metal") =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 1.5 fuse:15" })
    .unit("X2", { "1": "constant-feed YE 1.5", "2": "ground BK 1.5" })
    .wire("X1.1", "X2.1")
    .part("ground", "XE1", { surface })
    .wire("X2.2", "XE1");

export default defineExample({
  page: [
    "A ring on paint, on trim, on a door or on a seat-belt bolt holds by luck. Paint insulates, hinges are greased, and a bolt in thread lock conducts through its edge.",
    "Bare the metal, use a serrated washer, tighten, and seal it again. Measure under load, from the unit's ground to the battery's minus: a tenth of a volt at the most.",
  ],
  trips: () => unit("painted"),
  quiet: () => unit("bare-metal"),
  quietBecause: "The ring lies on bare metal.",
});
