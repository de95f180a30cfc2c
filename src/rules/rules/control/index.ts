import type { Rule } from "../../rule.ts";
import illuminationOnSteadyFeed from "./illumination-on-steady-feed.ts";
import parkingBrakeGrounded from "./parking-brake-grounded.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [parkingBrakeGrounded, illuminationOnSteadyFeed];
