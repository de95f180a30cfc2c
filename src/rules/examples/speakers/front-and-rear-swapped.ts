import type { Build } from "../build.ts";
import { defineExample } from "../example.ts";
import { withSpeakers } from "./receiver.ts";

const joined = (first: string, second: string): Build =>
  withSpeakers("bridged", "rear-left")
    .wire("A1.1", `${first}.+`)
    .wire("A1.2", `${first}.−`)
    .wire("A1.3", `${second}.+`)
    .wire("A1.4", `${second}.−`);

export default defineExample({
  page: [
    "With the pairs of front and rear exchanged the fader works backwards, and the telephone, the warnings and the spoken directions come from behind the driver.",
    "Rear outputs that drive tweeters in front on purpose, on their own side, are left alone; so is a unit with two channels that drives front and rear alike.",
  ],
  trips: () => joined("P2", "P1"),
  quiet: () => joined("P1", "P2"),
  quietBecause: "Each output goes to the speaker that bears its name.",
});
