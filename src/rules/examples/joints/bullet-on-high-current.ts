import { defineExample } from "../example.ts";
import { feed } from "./lamp.ts";

export default defineExample({
  page: [
    "A bullet touches along a thin line. With much current it warms, the brass loses its spring, it grips less and warms more.",
    "What goes through it is taken from the solved harness, in the state in which it is most. Up to 10 A a good pair bears for good.",
  ],
  trips: () => feed({ method: "bullet-pair", cover: "housing" }, 14),
  quiet: () => feed({ method: "bullet-pair", cover: "housing" }, 6),
  quietBecause: "6 A do not warm it.",
});
