import type { Harness, Wire, WireId } from "../../graph/harness.ts";
import type { CircuitElement } from "../solve/circuit.ts";
import type { Built, WireFacts } from "./built.ts";
import type { Ask } from "./circuit-of.ts";
import type { KeyState } from "./key-state.ts";
import type { Solved } from "./readings.ts";
import { factsOf } from "./wires-of.ts";

/**
 * The circuit of a harness of which only the sizes, lengths and the like of some wires have changed since it was built:
 * a handful of elements is made anew, and all the rest stands.
 * @returns `null` where more than that has changed, and the circuit has to be built from the harness
 */
export function rewired(
  before: Solved & { readonly state: KeyState },
  harness: Harness,
  state: KeyState,
  ask: Ask,
): Built | null {
  const { harness: old, built } = before;
  const stands =
    old.parts === harness.parts &&
    old.runs === harness.runs &&
    old.settings === harness.settings &&
    sameList(before.state.conditions, state.conditions) &&
    sameList(before.state.closed, state.closed) &&
    before.state.key === state.key &&
    sameAsk(before.ask, ask);
  if (!stands) return null;
  const ids = Object.keys(harness.wires) as WireId[];
  if (ids.length !== built.wires.size) return null;
  const changed: Wire[] = [];
  let at = 0;
  for (const id of built.wires.keys()) {
    // The document's order is that of the elements.
    if (ids[at++] !== id) return null;
    const [now, then] = [harness.wires[id]!, old.wires[id]!];
    if (now === then) continue;
    if (!alikeButForFigures(now, then)) return null;
    changed.push(now);
  }
  const setting = { ...built.setting, harness };
  if (changed.length === 0) return { ...built, setting };
  const elements: CircuitElement[] = [...built.circuit.elements];
  const wires = new Map<WireId, WireFacts>(built.wires);
  for (const wire of changed) {
    const { element } = wires.get(wire.id)!;
    const facts = { ...factsOf({ setting, note: () => {} }, wire), element };
    wires.set(wire.id, facts);
    const known = elements[element];
    // A broken wire stays open whatever its size.
    if (known?.kind === "resistance") elements[element] = { ...known, resistance_ohm: facts.resistance_ohm };
  }
  return { ...built, setting, wires, circuit: { ...built.circuit, elements } };
}

/** Nothing was stated that was not, or the other way about: then the same things are taken for granted. */
function alikeButForFigures(now: Wire, then: Wire): boolean {
  const stated = (wire: Wire) => wire.area_mm2 !== "unknown" && wire.length_m !== "unknown";
  return (
    now.ends === then.ends &&
    now.runs === then.runs &&
    stated(now) &&
    stated(then) &&
    now.insulation === then.insulation &&
    now.material === then.material
  );
}

function sameAsk(one: Ask, other: Ask): boolean {
  return (
    one.usual === other.usual &&
    one.battery_V === other.battery_V &&
    one.ambient_degC === other.ambient_degC &&
    one.coldLamps === other.coldLamps &&
    sameList(one.broken, other.broken)
  );
}

function sameList(one: readonly string[] = [], other: readonly string[] = []): boolean {
  return one === other || (one.length === other.length && one.every((item, index) => item === other[index]));
}
