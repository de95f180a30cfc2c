import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const spare = (row: string) => build().vehicle("X1", { "7": row }).wire("X1.7", "XC1", "PK");

export default defineExample({
  page: [
    "A lead that is not used stays in the loom for years. Colours fade and charts are lost; what it was for is then a matter of guesses.",
    "Give the cavity its function, or write on the lead's label what was found out about it, such as that it was dead in every key position.",
  ],
  trips: () => spare("unknown PK spare"),
  quiet: () => spare("mute PK spare"),
  quietBecause: "The cavity says that the lead is the mute input.",
});
