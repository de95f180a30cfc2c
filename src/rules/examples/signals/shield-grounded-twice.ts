import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const picture = () =>
  build()
    .module("A1", {
      name: "rear camera",
      role: "camera",
      rows: { "1": "video-signal gives WH", "2": "video-shield gives BU" },
    })
    .module("A2", {
      name: "display",
      role: "display",
      rows: { "1": "video-signal takes WH", "2": "video-shield takes BU", "3": "shield-drain" },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2");

export default defineExample({
  page: [
    "A foil or braid round a twisted pair keeps noise out by leading it to ground. It carries no signal, so one ground is enough.",
    "Two grounds in a vehicle are never at the same volts. A shield on both takes over a part of what flows through the body between them, and gives it to the pair inside as hum. A coaxial or line cable is another matter: there the shield is the return, and has to be joined at both ends.",
  ],
  trips: () => picture().path("XE1", "A2.3").cable("WC1", "shielded-pair", ["W1", "W2"], "W3"),
  quiet: () => picture().path("XC1", "A2.3").cable("WC1", "shielded-pair", ["W1", "W2"], "W3"),
  quietBecause: "The shield is grounded at the display and insulated at the camera.",
});
