import { defineExample } from "../example.ts";
import { receiver } from "./receiver.ts";

const van = (outputs: "bridged" | "common-negative") =>
  receiver(outputs)
    .vehicle("X3", { "1": "speaker-front-left-plus WH", "2": "speaker-front-right-plus GY" })
    .wire("A1.1", "X3.1")
    .wire("A1.3", "X3.2");

export default defineExample({
  page: [
    "Old vehicles have one lead to each speaker, and the speakers come back by the frame or by one lead for all. Their radios had outputs that were made for it.",
    "A receiver with bridged outputs needs two leads of its own to each speaker. The sign on the drawing is a vehicle's chart with fewer speaker negatives than positives.",
  ],
  trips: () => van("bridged").path("A1.2", "XC1").path("A1.4", "XC2"),
  quiet: () => van("common-negative").path("A1.2", "XJ1", "XE1").wire("A1.4", "XJ1"),
  quietBecause:
    "This receiver's sheet says that its outputs have one common negative, which goes to the frame as theirs does.",
});
