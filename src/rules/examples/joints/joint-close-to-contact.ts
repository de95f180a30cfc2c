import { defineExample } from "../example.ts";
import { lamp, SEALED } from "./lamp.ts";

export default defineExample({
  page: [
    "A joint is stiff. Close to a plug it pushes at the contact each time the loom moves, until the contact backs out or opens.",
    "Repair manuals ask for 40 mm of free lead, aircraft practice for much more.",
  ],
  trips: () => lamp(SEALED, { length_m: 0.02 }),
  quiet: () => lamp(SEALED, { length_m: 0.05 }),
  quietBecause: "50 mm of lead stay free between the plug and the joint.",
});
