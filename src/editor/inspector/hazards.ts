import type { Run } from "../../graph/harness.ts";

/** What a box or a stretch of loom may come near, as the list of ticks has it. */
export const HAZARDS: Run["near"] = [
  "airbag",
  "high-voltage",
  "heat",
  "ignition",
  "moving-parts",
  "pedals",
  "seat-rails",
  "trim-screws",
  "drivers-sight",
  "knees-or-heads",
];

export const HAZARD_NAMES: Partial<Record<Run["near"][number], string>> = {
  airbag: "an airbag or its leads",
  "high-voltage": "high voltage (orange leads)",
  heat: "exhaust or other heat",
  ignition: "ignition or injector leads",
  "moving-parts": "moving parts",
  pedals: "pedals or steering column",
  "seat-rails": "seat rails",
  "trim-screws": "screws of trim or shelves",
  "drivers-sight": "the driver's sight",
  "knees-or-heads": "where knees or heads may strike",
};
