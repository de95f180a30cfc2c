import { defineExample } from "../example.ts";
import { lamp, SEALED } from "./lamp.ts";

export default defineExample({
  page: [
    "Outside, in the engine bay and in doors there is water. It creeps under a plain sleeve, turns the copper green, and travels along inside the insulation to the next plug.",
    "An adhesive-lined sleeve is tight when a ring of adhesive has come out at both ends. State where a joint lies in its details, or draw the runs of its leads.",
  ],
  trips: () => lamp({ method: "solder-and-sleeve", cover: "sleeve", zone: "outside" }),
  quiet: () => lamp({ ...SEALED, zone: "outside" }),
  quietBecause: "The sleeve has adhesive inside, which seals it at both ends.",
});
