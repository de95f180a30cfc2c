import { defineExample } from "../example.ts";
import { battery } from "./parts.ts";

const two = () =>
  battery()
    .part("supply", "G2", { cover: "boot", name: "house battery" })
    .part("fuse", "F1", { rating_A: 30 })
    .part("fuse", "F2", { rating_A: 30 })
    .path("G2.−", "XE2")
    .path("G1.+", "F1")
    .path("F2", "G2.+");

export default defineExample({
  page: [
    "Two batteries whose plus posts are joined at all times are never equally full: the fuller one discharges into the other. And what belongs to one of them stays live when that one is switched off or taken out.",
    "A split-charge relay joins them only while the engine charges; a diode or a charger lets current through one way. Each battery gets a fuse of its own, for either can feed a short on the lead between.",
  ],
  trips: () => two().wire("F1", "F2"),
  quiet: () =>
    two()
      .part("relay", "K1", { poles: "make", suppression: "diode" })
      .vehicle("X1", { "1": "alternator-lamp BU", "2": "ground BN" })
      .wire("F1", "K1.30")
      .wire("K1.87", "F2.1")
      .path("X1.1", "K1.86")
      .path("K1.85", "X1.2"),
  quietBecause: "A split-charge relay stands between the two, driven while the engine charges.",
});
