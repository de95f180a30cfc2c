import { findContact } from "../../../src/catalogue/describe.ts";
import type { KeyState } from "../../../src/electrical/operate/key-state.ts";
import { type OperateOptions, operate } from "../../../src/electrical/operate/operate.ts";
import type { Readings } from "../../../src/electrical/operate/readings.ts";
import { contactKey } from "../../../src/graph/contacts.ts";
import type { Harness, WireId } from "../../../src/graph/harness.ts";
import { trace } from "../../../src/graph/trace.ts";

export const RUN: KeyState = { key: "run", conditions: [] };

/** Readings with questions by designation, so that a failing test can be read. */
export function ask(harness: Harness, state: KeyState = RUN, options: OperateOptions = {}) {
  const readings = operate(harness, trace(harness), state, options);
  const key = (name: string) => {
    const at = findContact(harness, name);
    if (!at) throw new Error(`there is no contact ${name}`);
    return contactKey(at.part, at.contact);
  };
  const partId = (name: string) => {
    const part = Object.values(harness.parts).find((one) => one.designation === name);
    if (!part) throw new Error(`there is no part ${name}`);
    return part.id;
  };
  return {
    readings,
    volts: (name: string) => readings.contacts.get(key(name)),
    wire: (name: string) => readings.wires.get(`w:${name}` as WireId)!,
    fuse: (name: string) => readings.fuses.get(partId(name))!,
    relay: (name: string) => readings.relays.get(partId(name))!,
    load: (name: string) => readings.loads.get(key(name))!,
    source: (name: string) => readings.sources.get(key(name))!,
    codes: () => readings.warnings.map(({ code }) => code),
    assumed: () => readings.assumptions.map(({ code }) => code),
  };
}

/** Kirchhoff's law at every contact: the most that is astray anywhere, amperes. Every number met is finite. */
export function astray_A({ solved }: Readings): number {
  const { circuit } = solved.built;
  const leaving = new Float64Array(circuit.nodeCount);
  circuit.elements.forEach((element, index) => {
    const amps = solved.solution.amps[index]!;
    if (element.kind === "supply" || element.kind === "output") {
      leaving[element.plus]! -= amps;
      leaving[element.minus]! += amps;
    } else {
      const [from, to] =
        element.kind === "diode" ? [element.anode, element.cathode] : [element.from, element.to];
      leaving[from]! += amps;
      leaving[to]! -= amps;
    }
  });
  return Math.max(0, ...leaving.map(Math.abs));
}
