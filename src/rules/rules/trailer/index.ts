import type { Rule } from "../../rule.ts";
import combinedAndSeparateLamps from "./combined-and-separate-lamps.ts";
import lampOutsideItsClass from "./lamp-outside-its-class.ts";
import plateLampFromBothSides from "./plate-lamp-from-both-sides.ts";
import plugAndSocketSameView from "./plug-and-socket-same-view.ts";
import trailerFeedNotIsolated from "./trailer-feed-not-isolated.ts";
import trailerLampsWithoutRelay from "./trailer-lamps-without-relay.ts";
import trailerReturnsJoined from "./trailer-returns-joined.ts";
import trailerWithoutGround from "./trailer-without-ground.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  trailerFeedNotIsolated,
  trailerLampsWithoutRelay,
  trailerWithoutGround,
  trailerReturnsJoined,
  combinedAndSeparateLamps,
  plateLampFromBothSides,
  lampOutsideItsClass,
  plugAndSocketSameView,
];
