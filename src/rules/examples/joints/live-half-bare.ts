import { defineExample } from "../example.ts";
import { feed } from "./lamp.ts";

export default defineExample({
  page: [
    "A pair of bullets has one half with a bare pin and one that is shrouded in plastic. When the two are parted, one half goes on being live.",
    "That must be the shrouded one. Say in the joint's details which half carries the feed.",
  ],
  trips: () => feed({ method: "bullet-pair", cover: "housing", liveHalf: "bare" }),
  quiet: () => feed({ method: "bullet-pair", cover: "housing", liveHalf: "shrouded" }),
  quietBecause: "The shrouded half is on the side of the feed.",
});
