import { defineExample } from "../example.ts";
import { fused } from "./loom.ts";

export default defineExample({
  page: [
    "The edge of a hole in sheet metal is a saw, and every mile draws the loom over it. Sooner or later the copper touches the body.",
    "A grommet covers the edge. A clamp that holds the loom 10 mm clear of it all round is as good. It is a danger where a wire in the loom is live with the key off, or has no fuse.",
  ],
  trips: () => fused({ passes: [{ what: "bulkhead", protection: "none" }] }),
  quiet: () => fused({ passes: [{ what: "bulkhead", protection: "clamp" }] }),
  quietBecause: "A clamp holds the loom clear of the edge.",
});
