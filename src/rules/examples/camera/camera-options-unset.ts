import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const camera = (position: "unset" | "off") =>
  build().module("A1", {
    name: "rear camera",
    role: "camera",
    switches: [
      { label: "white loop", position, wanted: "off", meaning: "on: picture not mirrored" },
      { label: "green loop", position: "on", wanted: "on", meaning: "on: guide lines" },
    ],
  });

export default defineExample({
  page: [
    "Many cameras have little loops of wire in their tail: cut or joined they choose a mirrored picture, one that is upside down, or guide lines. Makers do not agree which way means what.",
    "A camera behind has to be mirrored, so that what is at the left is on the left of the screen; one in front must not be. Two sets of guide lines come about where camera and display both draw them.",
  ],
  trips: () => camera("unset"),
  quiet: () => camera("off"),
  quietBecause: "What is cut and what is joined is written down, and is what the job wants.",
});
