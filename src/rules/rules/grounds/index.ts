import type { Rule } from "../../rule.ts";
import groundDropTooGreat from "./ground-drop-too-great.ts";
import groundLoop from "./ground-loop.ts";
import groundOfSafetySystem from "./ground-of-safety-system.ts";
import groundOnPoorMetal from "./ground-on-poor-metal.ts";
import groundPastBatterySensor from "./ground-past-battery-sensor.ts";
import groundThinnerThanFeed from "./ground-thinner-than-feed.ts";
import groundsDaisyChained from "./grounds-daisy-chained.ts";
import returnThroughShield from "./return-through-shield.ts";
import senseGroundElsewhere from "./sense-ground-elsewhere.ts";
import tooManyRingsOnStud from "./too-many-rings-on-stud.ts";
import triggerPolarityWrong from "./trigger-polarity-wrong.ts";
import unitWithoutGround from "./unit-without-ground.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  unitWithoutGround,
  returnThroughShield,
  groundOfSafetySystem,
  groundOnPoorMetal,
  tooManyRingsOnStud,
  groundsDaisyChained,
  groundLoop,
  groundDropTooGreat,
  groundThinnerThanFeed,
  groundPastBatterySensor,
  senseGroundElsewhere,
  triggerPolarityWrong,
];
