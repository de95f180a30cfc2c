import type { Harness } from "../../../src/graph/harness.ts";
import { check } from "../../../src/rules/check.ts";
import type { Finding } from "../../../src/rules/rule.ts";
import { CONTROL } from "./plant-control.ts";
import { CAMERA, DATA } from "./plant-data.ts";
import { FEEDS } from "./plant-feeds.ts";
import { GROUNDS } from "./plant-grounds.ts";
import { JOINTS } from "./plant-joints.ts";
import { PROTECTION } from "./plant-protection.ts";
import { RELAY_FAULTS } from "./plant-relays.ts";
import { DRAWING, PEOPLE } from "./plant-rest.ts";
import { ROUTING } from "./plant-routing.ts";
import { SAMPLES } from "./plant-samples.ts";
import { SIGNALS } from "./plant-signals.ts";
import { SPARES } from "./plant-spares.ts";
import { SPEAKERS } from "./plant-speakers.ts";
import { TAPS } from "./plant-taps.ts";
import { TRAILER } from "./plant-trailer.ts";
import { isOne, type Planter, speaksOf } from "./planter.ts";

/** Every way of going wrong, in the order of the reference. */
export const PLANTERS: readonly Planter[] = [
  SPARES,
  FEEDS,
  TAPS,
  PROTECTION,
  GROUNDS,
  SPEAKERS,
  SIGNALS,
  CONTROL,
  CAMERA,
  RELAY_FAULTS,
  DATA,
  JOINTS,
  ROUTING,
  TRAILER,
  PEOPLE,
  DRAWING,
  SAMPLES,
].flat();

const GRAVE = new Set(["danger", "fault"]);

/** What became of one planted fault. */
export type Verdict = {
  readonly found: boolean;
  /** Grave findings that are new, belong to no part of the fault, and do not stand under one that does. */
  readonly strays: readonly Finding[];
  /** The same of those that speak of the very place of the fault: true, but not told as one with it. */
  readonly apart: readonly Finding[];
  /** Those that are weak. */
  readonly weak: readonly Finding[];
  /** Grave findings of the harness before anything was planted. */
  readonly before: readonly Finding[];
  readonly fresh: readonly Finding[];
  /** Those that found it. */
  readonly hits: readonly Finding[];
};

export function judge(planter: Planter, seed: number): Verdict {
  const { clean, faulty, where } = planter.plant(seed);
  const old = check(clean);
  const keys = new Set(old.map((finding) => `${finding.key} ${finding.severity}`));
  const fresh = check(faulty).filter((finding) => !keys.has(`${finding.key} ${finding.severity}`));
  const belongs = (finding: Finding) =>
    isOne(finding, planter.rules) && (where.length === 0 || speaksOf(faulty, finding, where));
  const hits = new Set(fresh.filter(belongs).map((finding) => finding.key));
  const byKey = new Map(fresh.map((finding) => [finding.key, finding]));
  const stands = (finding: Finding): boolean => {
    for (let at: Finding | undefined = finding, steps = 0; at && steps < 20; steps++) {
      if (hits.has(at.key)) return true;
      at = at.under === null ? undefined : byKey.get(at.under);
    }
    return false;
  };
  const strays = fresh.filter(
    (finding) => !stands(finding) && !isOne(finding, planter.also) && !isOne(finding, planter.rules),
  );
  return {
    found: hits.size > 0,
    strays: strays.filter((finding) => GRAVE.has(finding.severity) && !speaksOf(faulty, finding, where)),
    apart: strays.filter((finding) => GRAVE.has(finding.severity) && speaksOf(faulty, finding, where)),
    weak: strays.filter((finding) => finding.severity === "weak"),
    before: old.filter((finding) => GRAVE.has(finding.severity) && finding.waiver === null),
    fresh,
    hits: fresh.filter(belongs),
  };
}

/** Grave findings of a harness that is as it ought to be, and the weak ones. */
export function alarms(harness: Harness): {
  readonly grave: readonly Finding[];
  readonly weak: readonly Finding[];
} {
  const open = check(harness).filter((finding) => finding.waiver === null);
  return {
    grave: open.filter((finding) => GRAVE.has(finding.severity)),
    weak: open.filter((finding) => finding.severity === "weak"),
  };
}
