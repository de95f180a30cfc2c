import type { Harness, PartId, WireId } from "../../../graph/harness.ts";
import type { Traced } from "../../../graph/trace.ts";
import { USUAL } from "../assumed.ts";
import { type BatteryVolts, batteryVolts } from "../circuit-of.ts";
import {
  type Condition,
  conditionsOf,
  designStatesOf,
  type KeyPosition,
  type KeyState,
} from "../key-state.ts";
import { operate } from "../operate.ts";
import type { Readings } from "../readings.ts";
import type { Answer } from "./answer.ts";
import { type Groups, groupsOf } from "./groups.ts";
import { StateView } from "./state-view.ts";

/** What may be opened to see what then happens: a part that no current passes any more, or a wire. */
export type Openable = { readonly part: PartId } | { readonly wire: WireId };

export type MostThrough = {
  /** 0 or more. */
  readonly amps: number;
  /** The first state with that current. */
  readonly state: KeyState;
};

type Distinct = { readonly answer: Answer; readonly state: KeyState };

/**
 * What a harness shows in every state that matters, as `operate` would tell it, worked out when somebody asks.
 *
 * The harness falls apart into groups that only the frame joins. A group is built once for all states, states that set
 * its switches and feeds alike share its answer, and an edit elsewhere leaves it valid, with all that was asked of it.
 *
 * Of the document it reads `parts` (every kind but caps and capacitors; designations order mated contacts and stand in
 * warnings), of `wires` ends, sizes, lengths, metals, insulations and runs, of `runs` zones and lengths, and of `settings`
 * the system voltage, the ambient temperature and `electrical` but for prices, standby and the fuse rule. It reads
 * neither layout, cables, waivers, titles, tests nor photos, nor colours and notes.
 */
export class InStates {
  /** Key positions with nothing on and with everything on, then each condition by itself. */
  readonly states: readonly KeyState[];
  private readonly groups: Groups;
  private readonly views = new Map<string, StateView>();
  private readonly viewOf = new WeakMap<KeyState, StateView>();
  private readonly volts = new Map<string, BatteryVolts>();
  private readonly most = new Map<number, readonly Distinct[]>();
  private readonly whole = new Map<string, Readings>();
  private lastWhole: Readings | null = null;
  private batteries: Harness["parts"] | null = null;

  constructor(
    readonly harness: Harness,
    private readonly traced: Pick<Traced, "wiresAt">,
    before: InStates | null,
  ) {
    this.states = statesOf(harness);
    this.groups = groupsOf(harness, before?.groups ?? null);
  }

  /** In one of the states, or in another. */
  at(state: KeyState): StateView {
    const known = this.viewOf.get(state);
    if (known) return known;
    const key = keyOf(state);
    let view = this.views.get(key);
    if (!view) {
      const { value, isSet } = this.voltsIn(state);
      view = new StateView(this.harness, this.groups, { state, battery_V: value, batteryIsSet: isSet });
      this.views.set(key, view);
    }
    this.viewOf.set(state, view);
    return view;
  }

  private voltsIn(state: KeyState): BatteryVolts {
    // Nothing else of a state decides what its batteries have.
    const key = state.key === "crank" ? "crank" : String(state.conditions.includes("engine-running"));
    let volts = this.volts.get(key);
    if (!volts) {
      volts = batteryVolts(this.harness, state, USUAL, undefined);
      this.volts.set(key, volts);
    }
    return volts;
  }

  /** The greatest current through a wire in all the states. */
  mostThrough(wire: WireId): MostThrough {
    let most = 0;
    let state = this.states[0]!;
    const group = this.at(state).groupOfWire(wire);
    const element = group < 0 ? -1 : this.groups.all[group]!.network.plan.wires.get(wire)!.element;
    if (element < 0) return { amps: most, state };
    for (const one of this.distinct(group)) {
      const amps = Math.abs(one.answer.amps(element));
      // The same to rounding is no more: then the first counts.
      if (amps > most * (1 + 1e-9)) [most, state] = [amps, one.state];
    }
    return { amps: most, state };
  }

  /** The states that can be told apart in a group, each by the first of its kind. */
  private distinct(group: number): readonly Distinct[] {
    let found = this.most.get(group);
    if (!found) {
      const seen = new Map<Answer, Distinct>();
      for (const state of this.states) {
        const answer = this.at(state).answerOf(group);
        if (!seen.has(answer)) seen.set(answer, { answer, state });
      }
      found = [...seen.values()];
      this.most.set(group, found);
    }
    return found;
  }

  /** A state with one part or wire opened. What is not in the harness opens nothing. */
  withOpen(what: Openable, state: KeyState): StateView {
    const view = this.at(state);
    const id = "part" in what ? what.part : what.wire;
    const group = "part" in what ? (this.groups.of.get(what.part) ?? -1) : view.groupOfWire(what.wire);
    if (group < 0) return view;
    const network = this.groups.all[group]!.with(id);
    return view.opening({ group, network });
  }

  /**
   * As `full`, but only of what wires, mating or a box join to a part: where a drop is lost and how. An edit elsewhere
   * leaves it valid. How full runs are it does not know.
   */
  around(part: PartId, state: KeyState): Readings | null {
    const group = this.groups.all[this.groups.of.get(part) ?? -1];
    if (!group) return null;
    const { value, isSet } = this.voltsIn(state);
    const key = `${keyOf(state)} ${value} ${isSet}`;
    let readings = group.readings.get(key);
    if (!readings) {
      const own = group.own();
      // What batteries have may come from one that is drawn elsewhere.
      this.batteries ??= Object.fromEntries(
        Object.entries(this.harness.parts).filter(([, { kind }]) => kind === "supply"),
      );
      const parts = { ...this.batteries, ...own.parts };
      readings = operate({ ...this.harness, parts, wires: own.wires }, this.traced, state);
      group.readings.set(key, readings);
    }
    return readings;
  }

  /** Everything, for who needs drops, budgets or reasons: `operate`, remembered. It costs much more than a view. */
  full(state: KeyState): Readings {
    const key = keyOf(state);
    let readings = this.whole.get(key);
    if (!readings) {
      readings = operate(this.harness, this.traced, state, { before: this.lastWhole });
      this.whole.set(key, readings);
      this.lastWhole = readings;
    }
    return readings;
  }
}

/** Conditions that come to a lead by themselves, with the key position that they are looked at in. */
const SINGLED: readonly (readonly [KeyPosition, Condition])[] = [
  ["run", "reverse"],
  ["run", "brake-on"],
  ["run", "lights-on"],
  ["run", "parking-brake-set"],
  ["run", "doors-open"],
  ["run", "unit-on"],
  ["off", "lights-on"],
];

function statesOf(harness: Pick<Harness, "parts">): readonly KeyState[] {
  const conditions = conditionsOf(harness);
  const states = [...designStatesOf(conditions)];
  const known = new Set(states.map(keyOf));
  for (const [key, condition] of SINGLED) {
    const state = { key, conditions: [condition] };
    if (conditions.includes(condition) && !known.has(keyOf(state))) states.push(state);
  }
  return states;
}

/** One text for states that are alike, whatever the order of what is so in them. */
function keyOf({ key, conditions, closed = [] }: KeyState): string {
  return [key, [...conditions].sort(), [...closed].sort()].join("|");
}

/**
 * @param traced of the same harness
 * @param before of the harness before an edit: what the edit left alone is used again. It stays good for its own harness.
 */
export function inStates(
  harness: Harness,
  traced: Pick<Traced, "wiresAt">,
  before: InStates | null = null,
): InStates {
  const same =
    before !== null &&
    before.harness.parts === harness.parts &&
    before.harness.wires === harness.wires &&
    before.harness.runs === harness.runs &&
    before.harness.settings === harness.settings;
  return same ? before : new InStates(harness, traced, before);
}
