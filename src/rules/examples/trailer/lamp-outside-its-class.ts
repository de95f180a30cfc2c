import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamp = (current_A: number) =>
  build()
    .vehicle("X1", { "1": "indicator-left YE 1 watched fuse:10", "3": "ground BN 1" })
    .part("load", "E1", { type: "lamp", function: "indicator-left", current_A })
    .path("X1.1", "E1.+")
    .wire("E1.−", "X1.3");

export default defineExample({
  page: [
    "A controller that watches its lamps knows what a good bulb draws. A lamp of LEDs draws a tenth of that, and passes for a failed bulb: the indicator flashes fast.",
    "The vehicle's controller can often be told of the new lamp. A resistor beside the lamp makes up the current by turning it into heat.",
  ],
  trips: () => lamp(0.15),
  quiet: () => lamp(1.75),
  quietBecause: "This lamp draws what a bulb of 21 W draws.",
});
