import { USUAL } from "../../../electrical/operate/assumed.ts";
import { sayState } from "../../../electrical/operate/key-state.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Camera, camerasOf } from "../../shared/cameras.ts";
import { fullLoad, type View, voltsAt } from "../../shared/full-load.ts";
import { heaviestStates } from "../../shared/states.ts";
import { sayPoint } from "../../words.ts";

/** Of a camera of which nothing is stated, in any vehicle. @source from memory: 12 V less a quarter */
const USUAL_LEAST_V = 9;
/** Less than this share of the battery is a lead that is off, and what leaks onto it. */
const OFF_SHARE = 0.3;

export default defineRule({
  meta: {
    id: "camera-starved",
    group: "camera",
    severity: "weak",
    summary: "A camera gets the volts that it needs whenever it is fed, while the starter turns too.",
    source: "a how-to page on cameras far behind; 9 V where nothing is stated: from memory",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["drop-too-great", "camera-ground-apart-from-display"],
  },
  *check(context) {
    const cameras = camerasOf(context).filter(({ feeds }) => feeds.length);
    if (!cameras.length) return;
    const running = fullLoad(context);
    for (const camera of cameras) {
      const range = camera.part.voltage_V;
      const least_V = range === "unknown" ? USUAL_LEAST_V : range.least_V;
      for (const feed of camera.feeds) {
        if (!mayStarve(context, camera, feed, running, least_V)) continue;
        const worst = worstOf(camera, feed, heaviestStates(context), least_V);
        if (!worst) continue;
        const [volts, { battery_V, state }] = worst;
        yield {
          message: `${camera.part.designation} gets ${volts.toFixed(1)} V at ${sayPoint(context, feed)} of the battery's ${battery_V.toFixed(1)} V (${sayState(state, context.harness)}); it needs ${least_V} V${range === "unknown" ? ", as is usual (from memory)" : ""}.`,
          consequence: "The picture drops out when the lamps come on or the engine cranks.",
          remedy:
            "Use a thicker lead, for its ground as well, or a feed nearer by; look for a bad ground or joint on the way.",
          about: [feed.at],
        };
      }
    }
  },
});

/** Loads that draw the same power draw more of a low battery, but no more than twice: enough to spare needs no other state. */
function mayStarve(context: Context, camera: Camera, feed: Point, running: View, least_V: number): boolean {
  const volts = voltsOf(camera, feed, running);
  if (volts === null) return false;
  const { battery_V } = running;
  const nominal_V = context.harness.settings.systemVoltage_V;
  const { rest_V, cranking_V } = context.harness.settings.electrical;
  const batteries = [
    rest_V === "unknown" ? USUAL.restPerVolt * nominal_V : rest_V,
    cranking_V === "unknown" ? USUAL.crankingPerVolt * nominal_V : cranking_V,
    battery_V,
  ].filter((given_V) => given_V >= least_V);
  return batteries.some((given_V) => given_V - 2 * (battery_V - volts) < least_V);
}

/** The state in which it lacks most, of those in which the wiring is to blame: the battery itself has enough. */
function worstOf(
  camera: Camera,
  feed: Point,
  states: readonly View[],
  least_V: number,
): readonly [number, View] | null {
  let worst: readonly [number, View] | null = null;
  for (const view of states) {
    const { battery_V } = view;
    const volts = voltsOf(camera, feed, view);
    if (volts === null || battery_V < least_V || volts < battery_V * OFF_SHARE || volts >= least_V) continue;
    if (!worst || volts < worst[0]) worst = [volts, view];
  }
  return worst;
}

/** Between its feed and its ground; `null` where one of them floats. */
function voltsOf({ grounds, part, points }: Camera, feed: Point, view: View): number | null {
  const back = part.kind === "load" ? points.find(({ contact }) => contact.number === 2) : grounds[0];
  const [plus, minus] = [voltsAt(view, feed.key), back ? voltsAt(view, back.key) : 0];
  return plus === null || minus === null ? null : plus - minus;
}
