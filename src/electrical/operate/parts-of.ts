import type { Fuse, Ground, Load, Part, Relay, Resistor, Speaker, Supply } from "../../graph/harness.ts";
import type { CircuitElement } from "../solve/circuit.ts";
import { type Builder, FRAME, open } from "./builder.ts";
import { isClosed } from "./key-state.ts";
import { fuse_ohm, joint_ohm } from "./resistances.ts";

/** Diodes of vehicle electrics: 1 nA, ideality 1.5, 50 mΩ: 0.80 V at 1 A. @source from memory */
const SILICON = { saturation_A: 1e-9, ideality: 1.5, resistance_ohm: 0.05 } as const;
/** Across a coil, where a resistor takes up its spark. @source from memory */
const SUPPRESSION_ohm = 680;
/** A cold filament's share of its hot resistance. @source from memory: a twelfth to a tenth */
const COLD_SHARE = 0.1;
const SPEAKER_SHARE = 0.8;

/** Adds what every part but connectors and modules is at direct current. Capacitors and caps are nothing. */
export function addPart(builder: Builder, part: Part): void {
  switch (part.kind) {
    case "splice":
      builder.note("joint", part.id, joint_ohm(part.method) * 1000);
      between(builder, part, "joint", joint_ohm(part.method));
      return;
    case "fuse":
      addFuse(builder, part);
      return;
    case "switch": {
      const { switch_ohm } = builder.setting.usual;
      builder.note("switch", part.id, switch_ohm * 1000);
      const [from, to] = [builder.node(part.id, 1), builder.node(part.id, 2)];
      const closed = isClosed(part, builder.setting.state);
      builder.add(part.id, "switch", { kind: "switch", from, to, closed, resistance_ohm: switch_ohm });
      return;
    }
    case "diode":
      builder.note("diode", part.id);
      builder.add(part.id, "diode", {
        kind: "diode",
        anode: builder.node(part.id, 1),
        cathode: builder.node(part.id, 2),
        ...SILICON,
      });
      return;
    case "relay":
      addRelay(builder, part);
      return;
    case "resistor":
      addResistor(builder, part);
      return;
    case "load":
      addLoad(builder, part);
      return;
    case "speaker":
      addSpeaker(builder, part);
      return;
    case "supply":
      addSupply(builder, part);
      return;
    case "ground":
      addGround(builder, part);
      return;
    case "cap":
    case "capacitor":
    case "connector":
    case "module":
      return;
  }
}

function between(
  builder: Builder,
  part: Part,
  role: "joint" | "fuse" | "resistor" | "speaker",
  resistance_ohm: number,
): void {
  const [from, to] = [builder.node(part.id, 1), builder.node(part.id, 2)];
  builder.add(part.id, role, { kind: "resistance", from, to, resistance_ohm });
}

function addFuse(builder: Builder, part: Fuse): void {
  if (part.rating_A === "unknown") {
    builder.note("fuse-unrated", part.id, builder.setting.usual.fuse_ohm * 1000);
    between(builder, part, "fuse", builder.setting.usual.fuse_ohm);
    return;
  }
  const resistance_ohm = fuse_ohm(part.form, part.rating_A);
  builder.note("fuse-cold", part.id, resistance_ohm * 1000);
  between(builder, part, "fuse", resistance_ohm);
}

function addRelay(builder: Builder, part: Relay): void {
  const { usual, nominal_V } = builder.setting;
  const [common, coil85, coil86, make, fifth] = [1, 2, 3, 4, 5].map((contact) =>
    builder.node(part.id, contact),
  );
  // A coil of twice the volts has four times the resistance at the same power.
  const usual_ohm = usual.coil_ohm * (nominal_V / 12) ** 2;
  if (part.coil_ohm === "unknown") builder.note("relay-coil", part.id, usual_ohm);
  builder.note("relay-volts", part.id, usual.pullIn * nominal_V);
  builder.note("relay-contact", part.id, usual.relayContact_ohm * 1000);
  const coil = builder.add(part.id, "coil", {
    kind: "coil",
    from: coil86!,
    to: coil85!,
    resistance_ohm: part.coil_ohm === "unknown" ? usual_ohm : part.coil_ohm,
    pullIn_V: usual.pullIn * nominal_V,
    dropOut_V: usual.dropOut * nominal_V,
  });
  const contact = (to: number, closedWhen: "pulled" | "released"): CircuitElement => ({
    kind: "contact",
    from: common!,
    to,
    coil,
    closedWhen,
    resistance_ohm: usual.relayContact_ohm,
  });
  builder.add(part.id, "make", contact(make!, "pulled"));
  if (part.poles === "changeover") builder.add(part.id, "rest", contact(fifth!, "released"));
  if (part.poles === "double-make") builder.add(part.id, "make", contact(fifth!, "pulled"));
  if (part.suppression === "diode") {
    // Its stripe is at 86, the plus side: wired the other way round it is a short, and the circuit shows it.
    builder.add(part.id, "suppression", { kind: "diode", anode: coil85!, cathode: coil86!, ...SILICON });
  } else if (part.suppression === "resistor") {
    builder.note("coil-resistor", part.id, SUPPRESSION_ohm);
    builder.add(part.id, "suppression", {
      kind: "resistance",
      from: coil86!,
      to: coil85!,
      resistance_ohm: SUPPRESSION_ohm,
    });
  }
}

function addResistor(builder: Builder, part: Resistor): void {
  if (part.resistance_ohm !== "unknown") {
    between(builder, part, "resistor", part.resistance_ohm);
    return;
  }
  builder.note("resistor-unstated", part.id);
  const [from, to] = [builder.node(part.id, 1), builder.node(part.id, 2)];
  builder.add(part.id, "resistor", { kind: "switch", from, to, closed: false, resistance_ohm: 1 });
}

function addSpeaker(builder: Builder, part: Speaker): void {
  const impedance_ohm = part.impedance_ohm === "unknown" ? 4 : part.impedance_ohm;
  builder.note("speaker-dc", part.id);
  between(builder, part, "speaker", impedance_ohm * SPEAKER_SHARE);
}

/** The usual behaviour of each type of load. @source common practice, no source */
function behaviourOf(part: Load): Exclude<Load["behaviour"], "unknown"> {
  if (part.behaviour !== "unknown") return part.behaviour;
  if (part.type === "lamp") return part.polarised ? "constant-current" : "filament";
  return part.type === "heater" || part.type === "sounder" ? "resistance" : "constant-current";
}

function addLoad(builder: Builder, part: Load): void {
  const { state, nominal_V } = builder.setting;
  const [plus, minus] = [builder.node(part.id, 1), builder.node(part.id, 2)];
  const asleep = state.key === "off" && part.standby_A !== "unknown";
  const element = asleep
    ? steady(builder, plus, minus, part.standby_A as number)
    : loadElement(builder, part, plus, minus);
  const stated_A = part.current_A === "unknown" ? null : part.current_A;
  const at = part.polarised
    ? builder.choose(part.id, "load", { on: element, off: open(element), box: -1, isOn: true }, 1)
    : builder.add(part.id, "load", element, 1);
  builder.takers.push({
    element: at,
    key: `${part.id}#1`,
    plus,
    minus,
    part: part.id,
    stated_A,
    nominal_V,
    polarised: part.polarised,
  });
}

function loadElement(builder: Builder, part: Load, from: number, to: number): CircuitElement {
  const { nominal_V, usual, coldLamps } = builder.setting;
  const amps = part.current_A;
  if (amps === "unknown" || amps === 0) {
    if (amps === "unknown") builder.note("load-unstated", part.id, usual.probe_ohm / 1000);
    return { kind: "resistance", from, to, resistance_ohm: usual.probe_ohm };
  }
  switch (behaviourOf(part)) {
    case "constant-current":
      builder.note("load-steady", part.id);
      return steady(builder, from, to, amps);
    case "constant-power":
      builder.note("load-rated-at", part.id, nominal_V);
      return { kind: "power-load", from, to, power_W: amps * nominal_V, minimum_V: usual.wakes * nominal_V };
    case "filament": {
      builder.note("load-filament", part.id);
      builder.note("load-rated-at", part.id, nominal_V);
      const cold_ohm = (nominal_V / amps) * COLD_SHARE;
      return {
        kind: "lamp",
        from,
        to,
        rated_V: nominal_V,
        rated_W: amps * nominal_V,
        cold_ohm,
        filament: coldLamps ? "cold" : "hot",
      };
    }
    case "resistance":
      builder.note("load-resistance", part.id);
      builder.note("load-rated-at", part.id, nominal_V);
      return { kind: "resistance", from, to, resistance_ohm: nominal_V / amps };
  }
}

/** The same current at any voltage that a box or load works at. */
export function steady(builder: Builder, from: number, to: number, amps: number): CircuitElement {
  const { nominal_V, usual } = builder.setting;
  return { kind: "current-load", from, to, amps, minimum_V: usual.wakes * nominal_V };
}

function addSupply(builder: Builder, part: Supply): void {
  const { usual, battery_V, batteryIsSet, nominal_V } = builder.setting;
  let inside_ohm = part.resistance_ohm;
  if (inside_ohm === "unknown") {
    const scale = part.voltage_V / 12;
    inside_ohm =
      part.capacity_Ah === "unknown"
        ? usual.battery_ohm * scale
        : (usual.battery_ohm_Ah * scale) / part.capacity_Ah;
    builder.note("battery-resistance", part.id, inside_ohm * 1000);
  }
  // A battery of the system follows its state; at rest it has what is written on it, unless somebody says.
  builder.givers.push({
    element: builder.add(
      part.id,
      "battery",
      {
        kind: "supply",
        plus: builder.node(part.id, 1),
        minus: builder.node(part.id, 2),
        emf_V: batteryIsSet && isOfSystem(part, nominal_V) ? battery_V : part.voltage_V,
        resistance_ohm: inside_ohm,
      },
      1,
    ),
    key: `${part.id}#1`,
    limit_A: null,
    limitedBy: "none",
  });
}

/** A battery of about the system's voltage; another is charged, or drained, by something else. */
export function isOfSystem(part: Supply, nominal_V: number): boolean {
  return Math.abs(part.voltage_V / nominal_V - 1) < 0.25;
}

function addGround(builder: Builder, part: Ground): void {
  const { usual } = builder.setting;
  const sound = part.surface === "bare-metal" || part.surface === "unknown";
  const resistance_ohm = sound ? usual.stud_ohm : usual.paintedStud_ohm;
  builder.note(sound ? "stud" : "stud-painted", part.id, resistance_ohm * 1000);
  const from = builder.node(part.id, 1);
  builder.add(part.id, "ground", { kind: "resistance", from, to: FRAME, resistance_ohm }, 1);
}
