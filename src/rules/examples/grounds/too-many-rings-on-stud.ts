import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamps = (count: number) => {
  const made = build()
    .vehicle("X1", { "1": "switched-feed RD 1 fuse:10" })
    .part("ground", "XE1", { surface: "bare-metal" });
  for (let at = 1; at <= count; at++)
    made
      .part("load", `E${at}`, { type: "lamp", current_A: 0.2 })
      .wire("X1.1", `E${at}.+`, "RD")
      .wire(`E${at}.−`, "XE1", "BN");
  return made;
};

export default defineExample({
  page: [
    "Rings on one stud are squeezed between one nut and the metal. Each more makes the pile softer, and the top one works loose first.",
    "Four is the usual limit. Beyond that, set a second stud, or a bus bar with one thick lead.",
  ],
  trips: () => lamps(5),
  quiet: () => lamps(3),
  quietBecause: "Three rings lie flat under one nut.",
});
