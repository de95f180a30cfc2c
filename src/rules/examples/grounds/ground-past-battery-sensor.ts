import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const unit = () =>
  build()
    .part("supply", "G1", { voltage_V: 12, sensor: "on-minus", cover: "boot" })
    .part("ground", "XE1", { surface: "bare-metal" })
    .wire("G1.−", "XE1", "BK", { area_mm2: 35, length_m: 0.3 })
    .vehicle("X1", { "1": "constant-feed RD fuse:10" })
    .unit("X2", { "1": "constant-feed YE", "2": "ground BK" })
    .wire("X1.1", "X2.1", "RD", { area_mm2: 1.5, length_m: 1 });

export default defineExample({
  page: [
    "Many vehicles measure what goes in and out of the battery by a sensor on its minus post. The sensor sees only what flows through its own cable to the body.",
    "A ground or a charger on the post itself goes past it. Land it on the body, where the sensor's cable lands.",
  ],
  trips: () => unit().wire("X2.2", "G1.−", "BK", { area_mm2: 1.5, length_m: 1 }),
  quiet: () => unit().wire("X2.2", "XE1", "BK", { area_mm2: 1.5, length_m: 1 }),
  quietBecause: "The unit's current passes the sensor on its way from the body to the battery.",
});
