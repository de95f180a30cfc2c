import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const spare = (method: "tape" | "sleeve-folded-back") =>
  build().vehicle("X1", { "1": "speed WH/BU 0.5 spare" }).part("cap", "XC1", { method }).wire("X1.1", "XC1");

export default defineExample({
  page: [
    "Tape round the end of a spare lead comes off in the first hot summer. Then a bare end hangs behind the trim.",
    "Shrink an end cap over it, or fold the end back and shrink a sleeve over the fold.",
  ],
  trips: () => spare("tape"),
  quiet: () => spare("sleeve-folded-back"),
  quietBecause: "The end is folded back under a sleeve.",
});
