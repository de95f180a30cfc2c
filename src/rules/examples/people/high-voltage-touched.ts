import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const plug = () =>
  build().vehicle("X1", { "1": "high-voltage OG", "2": "mute BN" }).wire("X1.2", "XC1", "BN");

export default defineExample({
  page: [
    "Traction batteries and what hangs on them stand at hundreds of volts. Their cables are mostly orange, but not every dangerous lead is: some systems between 12 V and the traction battery are blue or yellow.",
    "Equipment takes its power from the low-voltage battery. Whatever needs work on the high-voltage side is done by licensed people, by the maker's instructions.",
  ],
  trips: () => plug().wire("X1.1", "XC2", "OG"),
  quiet: plug,
  quietBecause: "Nothing goes to the high-voltage contact.",
});
