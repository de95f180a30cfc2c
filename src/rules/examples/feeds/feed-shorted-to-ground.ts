import { defineExample } from "../example.ts";
import { radioBay } from "./parts.ts";

const joined = () => radioBay().path("X1.1", "XJ1", "X2.1").path("X1.2", "X2.2").path("X1.3", "XJ2", "X2.3");

export default defineExample({
  page: [
    "A feed and the frame are joined by copper alone, with nothing between them that draws. That is a dead short: the fuse blows the moment it is put in, and without a fuse the wire burns.",
    "On the drawing it is mostly one wire too many, or one that ends a cavity beside where it should. Before the battery is connected, a meter between feed and ground must not show a few tenths of an ohm.",
  ],
  trips: () => joined().wire("XJ1", "XJ2", null, { area_mm2: 1.5 }),
  quiet: joined,
  quietBecause: "Feed and ground meet nowhere but in the receiver.",
});
