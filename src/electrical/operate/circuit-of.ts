import type { Harness } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import { USUAL, type Usual } from "./assumed.ts";
import { addBoxes, gatherBoxes } from "./boxes-of.ts";
import { Builder, FRAME } from "./builder.ts";
import type { Built } from "./built.ts";
import type { KeyState } from "./key-state.ts";
import { addMates } from "./mates-of.ts";
import { addPart, isOfSystem } from "./parts-of.ts";
import { addWires } from "./wires-of.ts";

/** What one may ask for besides the state; all of it goes before the harness's own settings. */
export type Ask = {
  readonly usual?: Partial<Usual>;
  /** At the posts of the system's batteries. */
  readonly battery_V?: number;
  readonly ambient_degC?: number;
  /** Filaments at the instant of switching on, which draw about ten times as much. */
  readonly coldLamps?: boolean;
  /** Wires, fuses and other parts taken as broken. */
  readonly broken?: readonly string[];
};

/**
 * The circuit that a harness is in one state, and the way back from every element of it. Contacts are nodes, in the order
 * of parts and contacts; node 0 is the vehicle's frame. Its shape is the same in every state, so one `prepare` serves all.
 * @param traced of the same harness
 * @throws RangeError for a temperature or voltage asked for that is not a number
 */
export function circuitOf(
  harness: Harness,
  traced: Pick<Traced, "wiresAt">,
  state: KeyState,
  ask: Ask = {},
): Built {
  const usual: Usual = { ...USUAL, ...ask.usual };
  const nominal_V = harness.settings.systemVoltage_V;
  const volts = batteryVolts(harness, state, usual, ask.battery_V);
  const ambient_degC = ask.ambient_degC ?? harness.settings.ambient_degC;
  for (const [name, value] of [
    ["battery_V", volts.value],
    ["ambient_degC", ambient_degC],
  ] as const)
    if (!Number.isFinite(value)) throw new RangeError(`${name} is ${value}; expected a number`);
  const builder = new Builder({
    harness,
    state,
    usual,
    nominal_V,
    battery_V: volts.value,
    batteryIsSet: volts.isSet,
    ambient_degC,
    coldLamps: ask.coldLamps ?? false,
    broken: new Set(ask.broken),
  });
  if (volts.assumed) builder.note(volts.assumed, null, volts.value);
  const wires = addWires(builder);
  for (const part of Object.values(harness.parts)) addPart(builder, part);
  const mates = addMates(builder);
  const hasWire = new Uint8Array(builder.keyOf.length);
  for (const node of mates.keys()) if (traced.wiresAt(builder.keyOf[node]!).length > 0) hasWire[node] = 1;
  addBoxes(builder, gatherBoxes(builder, mates, hasWire));
  return {
    setting: builder.setting,
    circuit: { nodeCount: builder.keyOf.length, ground: FRAME, elements: builder.elements },
    owners: builder.owners,
    choices: builder.choices,
    boxes: builder.boxes,
    givers: builder.givers,
    takers: builder.takers,
    firstNode: builder.firstNode,
    keyOf: builder.keyOf,
    wires,
    nominal_V,
    battery_V: volts.value,
    assumptions: builder.assumed.list(),
  };
}

export type BatteryVolts = {
  readonly value: number;
  readonly isSet: boolean;
  readonly assumed: "volts-rest" | "volts-running" | "volts-cranking" | null;
};

/** What stands at the posts of the system's batteries in a state, and whether anybody said so. */
export function batteryVolts(
  harness: Pick<Harness, "parts" | "settings">,
  state: KeyState,
  usual: Usual,
  asked: number | undefined,
): BatteryVolts {
  if (asked !== undefined) return { value: asked, isSet: true, assumed: null };
  const { systemVoltage_V: nominal_V, electrical } = harness.settings;
  const pick = (
    stated: number | "unknown",
    perVolt: number,
    code: Exclude<BatteryVolts["assumed"], null>,
  ): BatteryVolts =>
    stated === "unknown"
      ? { value: Number((perVolt * nominal_V).toPrecision(12)), isSet: true, assumed: code }
      : { value: stated, isSet: true, assumed: null };
  if (state.key === "crank") return pick(electrical.cranking_V, usual.crankingPerVolt, "volts-cranking");
  if (state.conditions.includes("engine-running"))
    return pick(electrical.running_V, usual.runningPerVolt, "volts-running");
  if (electrical.rest_V !== "unknown") return pick(electrical.rest_V, 1, "volts-rest");
  // The vehicle's feeds come from its battery: where that is drawn, they have its volts.
  for (const part of Object.values(harness.parts)) {
    if (part.kind === "supply" && isOfSystem(part, nominal_V))
      return { value: part.voltage_V, isSet: false, assumed: null };
  }
  return { ...pick("unknown", usual.restPerVolt, "volts-rest"), isSet: false };
}
