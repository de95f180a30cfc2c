import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const plug = () =>
  build().vehicle("X1", { "1": "mute BN spare", "2": "illumination GY spare" }).wire("X1.2", "XC2", "GY");

export default defineExample({
  page: [
    "Plugs come with more leads than a job needs. Those that stay unused are kept, for somebody may need them later, and each gets a cap of its own.",
    "Leads that are cut off flush can neither be used again nor be made safe; leads tied together touch each other.",
  ],
  trips: plug,
  quiet: () => plug().wire("X1.1", "XC1", "BN"),
  quietBecause: "Each spare lead ends under a cap of its own.",
});
