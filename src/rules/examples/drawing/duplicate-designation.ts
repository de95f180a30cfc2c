import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const two = (second: string) =>
  build()
    .vehicle("X1", { "1": "mute BN", "2": "illumination GY" })
    .unit("X2", { "1": "mute BN", "2": "illumination GY" })
    .wire("X1.1", "X2.1", "BN", { designation: "W1" })
    .wire("X1.2", "X2.2", "GY", { designation: "W2" })
    .change("W2", { designation: second });

export default defineExample({
  page: [
    "A designation is the only name that a part or a wire has on every paper: wire list, cut list, labels, tests. Two things of one name cannot be told apart there.",
    "It comes about when a piece of another harness is put in, or when somebody renames by hand.",
  ],
  trips: () => two("W1"),
  quiet: () => two("W2"),
  quietBecause: "Each wire has a name of its own.",
});
