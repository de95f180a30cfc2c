import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "The cheapest vehicle wire is made for 85 °C. In an engine bay after a hot run it is hotter than that, and the insulation turns soft, then brittle.",
    "Take wire for 105 °C or 125 °C there, or sleeve it. How hot the bay is can be stated in the settings; 100 °C is taken where nobody has.",
  ],
  trips: () => loom({ zone: "engine-bay" }, { insulation: "thin-wall-85" }),
  quiet: () => loom({ zone: "engine-bay" }, { insulation: "thin-wall-105" }),
  quietBecause: "105 °C is enough there.",
});
