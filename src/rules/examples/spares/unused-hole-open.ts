import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const tail = (second: string) =>
  build()
    .vehicle("X1", { "1": "reverse-lamp GN" })
    .unit("X2", { "1": "reverse-lamp GN", "2": second })
    .wire("X1.1", "X2.1", "GN")
    .run("R1", { zone: "outside" }, ["W1"]);

export default defineExample({
  page: [
    "A sealed housing keeps water out only while each of its holes holds a sealed lead or a plug. An empty hole is a pipe to the contacts beside it.",
    "Housings lie in the wet where every lead that lands on them comes through a run outside or in the engine bay.",
  ],
  trips: () => tail("not-used"),
  quiet: () => tail("not-used plugged"),
  quietBecause: "The empty hole holds a cavity plug.",
});
