import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const unit = (serves: "safety-system" | "this-job") =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 1.5 fuse:15" })
    .unit("X2", { "1": "constant-feed YE 1.5", "2": "ground BK 1.5" })
    .wire("X1.1", "X2.1")
    .part("ground", "XE1", { surface: "bare-metal", serves })
    .wire("X2.2", "XE1");

export default defineExample({
  page: [
    "Some studs belong to the airbags, the anti-lock brakes or a high-voltage system. They are marked in the vehicle's own papers, and they look like all others.",
    "Nothing else goes there. The makers of these systems ask for grounds that stay clean and tight, and whoever loosens one takes on their work. Follow the vehicle maker's instructions and leave such work to licensed people.",
  ],
  trips: () => unit("safety-system"),
  quiet: () => unit("this-job"),
  quietBecause: "This stud was made for the job.",
});
