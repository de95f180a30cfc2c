import { defineExample } from "../example.ts";
import { lamps } from "./lamp.ts";

export default defineExample({
  page: [
    "A crimp is made for stated sizes and few wires. With a fourth stuffed in, some strands are not gripped, and which of them nobody can see.",
    "For many leads there are terminal blocks. Two joints one after the other do as well.",
  ],
  trips: () => lamps(3, { method: "crimped-butt", cover: "adhesive-sleeve" }),
  quiet: () => lamps(3, { method: "terminal-block", cover: "housing" }),
  quietBecause: "A terminal block holds each wire under a screw of its own.",
});
