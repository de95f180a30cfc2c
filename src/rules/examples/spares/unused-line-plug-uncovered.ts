import type { Connector } from "../../../graph/harness.ts";
import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const plug = (cover: Connector["cover"]) =>
  build().unit(
    "X1",
    { S: "line-rear-left-signal spare", G: "line-rear-left-shield spare" },
    { form: "line-plug", cover },
  );

export default defineExample({
  page: [
    "The shell of an unused line plug is the unit's signal ground. Where it meets the frame there is hum; where it meets a live stud, the thin track inside the unit burns open, and every channel whines from then on.",
    "A cap has to cover the shell as well as the contact, each plug by itself, tied away from metal.",
  ],
  trips: () => plug("contact-only"),
  quiet: () => plug("whole"),
  quietBecause: "The cap covers contact and shell.",
});
