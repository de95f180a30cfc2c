import { nameContact } from "../../catalogue/describe.ts";
import { type ContactKey, refOfKey } from "../../graph/contacts.ts";
import type { PartId, WireId } from "../../graph/harness.ts";
import { type Answer, isKnown } from "../figure.ts";
import { checkFault, type FaultCheck } from "../fuse/adiabatic.ts";
import { type Blade, blade } from "../fuse/blade.ts";
import { prospectiveCurrent } from "../fuse/short-circuit.ts";
import type { Circuit } from "../solve/circuit.ts";
import { solve } from "../solve/solve.ts";
import { FRAME, nodeOf } from "./built.ts";
import { nameOfElement, pathOf, type Step } from "./path.ts";
import { bladeOf } from "./read-parts.ts";
import type { Readings } from "./readings.ts";

export type WireAtFault = {
  readonly wire: WireId;
  readonly amps: number;
  readonly check: FaultCheck | null;
  readonly why: string;
};

export type ShortCircuit = {
  /** What flows where the contact touches the frame. */
  readonly current: Answer;
  /** The fuse nearest the fault that all of it passes; the vehicle's own behind the feed where none is drawn. */
  readonly fuse: { readonly name: string; readonly part: PartId | null; readonly blade: Blade | null } | null;
  /** `clears`: the fuse opens before any wire on the way is too hot. */
  readonly verdict: "clears" | "overheats" | "not proven" | "no fuse" | "nothing flows";
  readonly wires: readonly WireAtFault[];
  readonly words: string;
};

/** Of a fault: no more than this, so that the sum has an answer. */
const TOUCH_ohm = 1e-5;

/**
 * What would flow if a contact touched the frame, and whether the fuse opens before the wires overheat.
 * Cables of a 125 °C class are taken as cross-linked, all others as PVC; they begin as hot as they are stated to be.
 * @param readings of the state in which it happens
 * @returns `null` for a contact that there is none of
 */
export function shortAt(readings: Readings, contact: ContactKey): ShortCircuit | null {
  const { built, harness } = readings.solved;
  const ref = refOfKey(contact);
  const node = nodeOf(built, ref.part, ref.contact);
  if (node === null) return null;
  const name = nameContact(harness, contact);
  const shorted = touching(readings, node, contact);
  const path = pathOf(shorted, contact);
  const giver = path?.source ? built.givers.find((one) => one.key === path.source) : undefined;
  const source = giver ? built.circuit.elements[giver.element] : undefined;
  // On the way back the frame is touched already: the load's own current only finds a shorter way.
  const before_V = readings.contacts.get(contact);
  const isAtGround = typeof before_V === "number" && Math.abs(before_V) < GROUND_SHARE * built.nominal_V;
  if (!path || isAtGround || path.amps < 1e-3 || source?.kind !== "supply") {
    return {
      current: { unknown: `${name} is not live in this state` },
      fuse: null,
      verdict: "nothing flows",
      wires: [],
      words: `${name} touching the frame: nothing flows in this state.`,
    };
  }
  const loop_ohm = Math.max(0, Math.abs(source.emf_V) / path.amps - source.resistance_ohm);
  const current = prospectiveCurrent(Math.abs(source.emf_V), source.resistance_ohm, loop_ohm);
  const supplySide = path.steps.filter(({ side }) => side === "supply");
  const fuse = fuseOn(shorted, supplySide, giver?.limitedBy === "fuse" ? giver.limit_A : null, path.source);
  const wires = supplySide.flatMap((step) => atFault(shorted, step, fuse?.blade ?? null));
  const verdict = verdictOf(fuse, wires);
  const amps = isKnown(current) ? `${Math.round(current.value)} A` : "";
  return {
    current,
    fuse,
    verdict,
    wires,
    words: `${name} touching the frame: ${amps}; ${say(verdict, fuse?.name, wires)}`,
  };
}

/** Of the nominal volts: what lies under it is the ground side of a load. @source common practice, no source */
const GROUND_SHARE = 0.05;

/** The same readings with the contact on the frame; the fault stands as a load of its own. */
function touching(readings: Readings, node: number, key: ContactKey): Readings {
  const { solved } = readings;
  const { built } = solved;
  const { circuit, owners } = built;
  const fault = { kind: "resistance", from: node, to: FRAME, resistance_ohm: TOUCH_ohm } as const;
  const shorted: Circuit = { ...circuit, elements: [...circuit.elements, fault] };
  const { part, contact } = refOfKey(key);
  const element = circuit.elements.length;
  return {
    ...readings,
    solved: {
      ...solved,
      solution: solve(shorted, { pulled: solved.solution.pulled, turnEachRelay: false }),
      built: {
        ...built,
        circuit: shorted,
        owners: {
          role: [...owners.role, "load"],
          id: [...owners.id, part],
          contact: [...owners.contact, contact],
        },
        takers: [
          {
            element,
            key,
            plus: node,
            minus: FRAME,
            part,
            stated_A: null,
            nominal_V: built.nominal_V,
            polarised: false,
          },
        ],
      },
    },
  };
}

function fuseOn(
  readings: Readings,
  supplySide: readonly Step[],
  behind_A: number | null,
  source: ContactKey | null,
): ShortCircuit["fuse"] {
  const { harness } = readings.solved;
  const step = supplySide.findLast(({ role }) => role === "fuse");
  if (step)
    return {
      name: nameOfElement(readings, step.element),
      part: step.part,
      blade: bladeOf(harness.parts[step.part!]),
    };
  if (behind_A === null || source === null) return null;
  return {
    name: `the ${behind_A} A fuse behind ${nameContact(harness, source)}`,
    part: null,
    blade: blade("regular", behind_A),
  };
}

function atFault(readings: Readings, step: Step, fuse: Blade | null): readonly WireAtFault[] {
  if (step.wire === null) return [];
  const facts = readings.solved.built.wires.get(step.wire)!;
  if (!fuse)
    return [
      { wire: step.wire, amps: step.amps, check: null, why: "no table of the fuse's times is at hand" },
    ];
  const crossLinked = facts.limit_degC >= 125;
  const check = checkFault(fuse, step.amps, {
    area_mm2: facts.area_mm2,
    material: facts.material,
    insulation: crossLinked ? "xlpe" : "pvc",
    start_degC: Math.max(-40, Math.min(facts.temperature_degC, crossLinked ? 249 : 159)),
  });
  return [{ wire: step.wire, amps: step.amps, check, why: check.why }];
}

function verdictOf(fuse: ShortCircuit["fuse"], wires: readonly WireAtFault[]): ShortCircuit["verdict"] {
  if (!fuse) return "no fuse";
  if (wires.some(({ check }) => check?.verdict === "overheats")) return "overheats";
  return wires.every(({ check }) => check?.verdict === "clears") ? "clears" : "not proven";
}

function say(
  verdict: ShortCircuit["verdict"],
  fuse: string | undefined,
  wires: readonly WireAtFault[],
): string {
  switch (verdict) {
    case "clears":
      return `${fuse} opens before a wire is too hot.`;
    case "overheats":
      return `${fuse} is too slow: ${wires.find(({ check }) => check?.verdict === "overheats")!.why}.`;
    case "no fuse":
      return "no fuse stands on the way.";
    default: {
      const open = wires.find(({ check }) => check?.verdict !== "clears");
      return `it is not proven that ${fuse} opens in time${open ? `: ${open.why}` : ""}.`;
    }
  }
}
