import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const plain = (property: string) =>
  build()
    .vehicle("X1", { "1": "illumination GY spare" })
    .wire("X1.1", "XC1", "GY")
    .rules({
      shop: "Thistledown workshop",
      own: [
        {
          id: "labels",
          words: "Every wire has a size",
          severity: "tidy",
          of: "wire",
          where: [{ property: "base-colour", is: "one-of", values: ["RD"] }],
          must: [{ property, is: "given", values: [] }],
        },
      ],
    });

export default defineExample({
  page: [
    "A shop can write down rules of its own. One that names a property which this version does not know, or asks for a number where none stands, cannot be judged.",
    "Such a rule is not quietly passed over: until it is put right, nobody should believe that it is being kept.",
  ],
  trips: () => plain("flavour"),
  quiet: () => plain("size"),
  quietBecause: "The shop's rule names a property that every wire has.",
});
