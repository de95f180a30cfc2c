import { defineExample } from "../example.ts";
import { withSpeakers } from "./receiver.ts";

const joined = (outputs: "bridged" | "common-negative") =>
  withSpeakers(outputs)
    .wire("A1.1", "P1.+")
    .wire("A1.3", "P2.+")
    .path("A1.2", "XJ1", "P1.−")
    .path("A1.4", "XJ1")
    .wire("XJ1", "P2.−", "BK");

export default defineExample({
  page: [
    "A bridged output has two output stages, one for each lead of the speaker, and both leads stand at half the battery's volts. The minus of one channel is not the minus of another.",
    "Tied together, the stages of two channels drive each other. With the unit on and silent, a meter from a speaker lead to the frame shows it: about half the battery's volts says bridged, about 0 V says that the minus is the frame.",
  ],
  trips: () => joined("bridged"),
  quiet: () => joined("common-negative"),
  quietBecause: "This receiver's sheet says that the negatives of its outputs are one lead inside.",
});
