import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const rear = () =>
  build()
    .vehicle("X1", { "1": "stop-lamp RD fuse:15", "2": "tail-lamps GY fuse:7.5", "3": "ground" })
    .part("load", "E1", { type: "lamp", function: "stop-lamp", current_A: 1.75 })
    .part("load", "E2", { type: "lamp", function: "tail-lamps", current_A: 0.42 })
    .part("load", "E3", { type: "lamp", function: "tail-lamps", current_A: 0.42 })
    .wire("X1.1", "E1.+")
    .path("X1.2", "XJ2", "E2.+")
    .wire("XJ2", "E3.+")
    .wire("E3.−", "XE2");

export default defineExample({
  page: [
    "Two lamps share a ground. Where that ground opens, the current of the one finds its way through the other and on through whatever hangs on the other's lead: press the brake, and tail lamps glow while the stop lamp stays dark.",
    "A safety lamp with a ground that nothing else uses cannot do that.",
  ],
  trips: () => rear().path("E1.−", "XJ1", "XE1").wire("E2.−", "XJ1"),
  quiet: () => rear().wire("E1.−", "XE1").wire("E2.−", "X1.3"),
  quietBecause: "The stop lamp has a ground of its own.",
});
