import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "Pedals, the rails of a seat and wiper rods move, and a loop of wire that hangs into their way is pinched or jams them. At a pedal that is a matter of life.",
    "State what a run comes close to in its details. A fixed conduit holds it off; otherwise lay it another way.",
  ],
  trips: () => loom({ near: ["pedals"], covering: "split-loom" }),
  quiet: () => loom({ near: ["seat-rails"], covering: "conduit" }),
  quietBecause: "A fixed conduit keeps the wires out of the rails.",
});
