import type { Examples } from "../example.ts";
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

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "ground-drop-too-great": groundDropTooGreat,
  "ground-loop": groundLoop,
  "ground-of-safety-system": groundOfSafetySystem,
  "ground-on-poor-metal": groundOnPoorMetal,
  "ground-past-battery-sensor": groundPastBatterySensor,
  "ground-thinner-than-feed": groundThinnerThanFeed,
  "grounds-daisy-chained": groundsDaisyChained,
  "return-through-shield": returnThroughShield,
  "sense-ground-elsewhere": senseGroundElsewhere,
  "too-many-rings-on-stud": tooManyRingsOnStud,
  "trigger-polarity-wrong": triggerPolarityWrong,
  "unit-without-ground": unitWithoutGround,
};
