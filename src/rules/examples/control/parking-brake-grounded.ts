import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const screen = () => build().unit("X2", { "9": "parking-brake GN 0.5" });

export default defineExample({
  page: [
    "A screen shows moving pictures only while its parking-brake lead is grounded. The vehicle's own switch grounds it when the brake is set, and opens it when the vehicle drives.",
    "Tied to the frame for good, the lead tells the screen that the vehicle always stands. One finds it with a meter: from the lead to the frame, with the brake released, the way must be open.",
    "Follow the screen maker's instructions and the law of the place. No picture belongs in the driver's sight under way.",
  ],
  trips: () => screen().path("X2.9", "XE1"),
  quiet: () => screen().part("switch", "S1", { operatedBy: "parking-brake" }).path("X2.9", "S1", "XE1"),
  quietBecause: "The parking-brake switch stands between the lead and the frame.",
});
