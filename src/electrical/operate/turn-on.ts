import { functionOf } from "../../catalogue/functions.ts";
import { type ContactKey, contactsOf, refOfKey } from "../../graph/contacts.ts";
import { solvePrepared } from "../solve/solve.ts";
import { type TurnOnCheck, type TurnOnLoad, turnOnCheck } from "../standby/turn-on.ts";
import { isTurnOn } from "./boxes-of.ts";
import type { Design } from "./design.ts";
import { nameLoad } from "./drop.ts";
import { pathOf } from "./path.ts";
import type { Readings } from "./readings.ts";

export type TurnOn = {
  readonly output: ContactKey;
  readonly readings: Readings;
  readonly check: TurnOnCheck;
};

/** What hangs on each output that only says "on", against what it may give, in the state in which it gives most. */
export function turnOnsOf(design: Design): readonly TurnOn[] {
  const found = new Map<ContactKey, TurnOn>();
  for (const readings of design.readings) {
    for (const [output, source] of readings.sources) {
      if (source.limitedBy !== "output" || !source.limit_A || !isTurnOnOutput(readings, output)) continue;
      const loads = loadsOf(unlimited(readings, output, source.limit_A), output);
      const check = turnOnCheck(loads, source.limit_A * 1000);
      const known = found.get(output);
      if (!known || check.total.value > known.check.total.value)
        found.set(output, { output, readings, check });
    }
  }
  return [...found.values()];
}

function isTurnOnOutput(readings: Readings, key: ContactKey): boolean {
  const { part, contact } = refOfKey(key);
  const owner = readings.solved.harness.parts[part];
  const name = owner ? contactsOf(owner)[contact - 1]?.function : undefined;
  return isTurnOn(functionOf(name ?? "unknown"));
}

/**
 * What would flow if the output gave as much as is asked of it: at its limit, its volts fall until no more is drawn, and
 * what hangs on it looks lighter than it is.
 */
function unlimited(readings: Readings, output: ContactKey, limit_A: number): Readings {
  const { solved } = readings;
  const { built } = solved;
  const element = built.givers.find(({ key }) => key === output)?.element;
  const limited = element === undefined ? undefined : built.circuit.elements[element];
  if (limited?.kind !== "output" || solved.solution.amps[element!]! < limit_A * (1 - 1e-6)) return readings;
  const elements = [...built.circuit.elements];
  elements[element!] = { ...limited, limit_A: NO_LIMIT_A };
  const circuit = { ...built.circuit, elements };
  const solution = solvePrepared(solved.prepared, circuit, { pulled: solved.solution.pulled });
  const loads = new Map(
    built.takers.map((taker) => {
      const known = readings.loads.get(taker.key)!;
      return [taker.key, { ...known, amps: solution.amps[taker.element]! }] as const;
    }),
  );
  return { ...readings, loads, solved: { ...solved, solution, built: { ...built, circuit } } };
}

const NO_LIMIT_A = 1e6;

/** Loads whose current comes out of an output. Coils are loads of it too. */
function loadsOf(readings: Readings, output: ContactKey): readonly TurnOnLoad[] {
  const { built, harness, solution } = readings.solved;
  const element = built.givers.find(({ key }) => key === output)?.element;
  const through = (load: ContactKey) =>
    pathOf(readings, load)?.steps.some((step) => step.element === element) ?? false;
  const loads = [...readings.loads]
    .filter(([key, { amps }]) => Math.abs(amps) > 1e-6 && through(key))
    .map(([key, { amps }]) => ({ name: nameLoad(harness, key), load_mA: Math.abs(amps) * 1000 }));
  // What no load accounts for goes through coils, or to ground.
  const total_mA = Math.max(0, solution.amps[element!]!) * 1000;
  const rest_mA = total_mA - loads.reduce((sum, { load_mA }) => sum + load_mA, 0);
  return rest_mA > Math.max(0.01, total_mA * 1e-6)
    ? [...loads, { name: "coils and the like", load_mA: rest_mA }]
    : loads;
}
