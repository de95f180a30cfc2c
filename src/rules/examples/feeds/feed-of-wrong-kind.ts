import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const from = (gives: string) =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:15", "2": `${gives} YE fuse:10`, "3": "ground BN" })
    .module("A1", { role: "receiver", name: "radio receiver" })
    .receptacle("X2", "A1", { "1": "constant-feed YE", "2": "switched-feed RD", "3": "ground BK" })
    .path("X1.1", "X2.1")
    .path("X1.2", "X2.2")
    .path("X1.3", "X2.3");

export default defineExample({
  page: [
    "Not every feed that comes with the key is the same. Accessory is live from the first position on and drops out while the engine cranks; ignition is live only when the engine may run, but also while it cranks.",
    "A receiver on ignition is dead when somebody sits and waits with the key at accessory. A box that has to go on working through the start falls out on accessory. Try each position of the key with a meter before you choose a lead.",
  ],
  trips: () => from("ignition-feed"),
  quiet: () => from("switched-feed"),
  quietBecause: "The switched input lies on a lead that is live with the key at accessory.",
});
