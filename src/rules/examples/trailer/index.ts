import type { Examples } from "../example.ts";
import combinedAndSeparateLamps from "./combined-and-separate-lamps.ts";
import lampOutsideItsClass from "./lamp-outside-its-class.ts";
import plateLampFromBothSides from "./plate-lamp-from-both-sides.ts";
import plugAndSocketSameView from "./plug-and-socket-same-view.ts";
import trailerFeedNotIsolated from "./trailer-feed-not-isolated.ts";
import trailerLampsWithoutRelay from "./trailer-lamps-without-relay.ts";
import trailerReturnsJoined from "./trailer-returns-joined.ts";
import trailerWithoutGround from "./trailer-without-ground.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "combined-and-separate-lamps": combinedAndSeparateLamps,
  "lamp-outside-its-class": lampOutsideItsClass,
  "plate-lamp-from-both-sides": plateLampFromBothSides,
  "plug-and-socket-same-view": plugAndSocketSameView,
  "trailer-feed-not-isolated": trailerFeedNotIsolated,
  "trailer-lamps-without-relay": trailerLampsWithoutRelay,
  "trailer-returns-joined": trailerReturnsJoined,
  "trailer-without-ground": trailerWithoutGround,
};
