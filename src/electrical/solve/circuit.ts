/**
 * A network of two-terminal elements between numbered nodes, for its direct-current operating point.
 * It knows nothing of a harness: whoever builds one from a document keeps the way back to wires and contacts.
 */
export type Circuit = {
  /** Nodes are 0 … nodeCount − 1. */
  readonly nodeCount: number;
  /** The node that volts are measured from, in the island that holds it. */
  readonly ground?: number;
  readonly elements: readonly CircuitElement[];
};

/** A battery, charger or converter: an electromotive force behind a resistance. 0 Ω is an ideal supply. */
export type Supply = {
  readonly kind: "supply";
  readonly plus: number;
  readonly minus: number;
  readonly emf_V: number;
  readonly resistance_ohm: number;
};

/** The output of a module that gives no more than `limit_A`, whatever hangs on it. */
export type Output = {
  readonly kind: "output";
  readonly plus: number;
  readonly minus: number;
  readonly emf_V: number;
  readonly resistance_ohm: number;
  readonly limit_A: number;
};

type Between = { readonly from: number; readonly to: number };

/** Wires, contacts, joints, whole fuses, heaters, ladders, terminators, speakers at rest. */
export type Resistance = Between & { readonly kind: "resistance"; readonly resistance_ohm: number };

export type Switch = Between & {
  readonly kind: "switch";
  readonly closed: boolean;
  readonly resistance_ohm: number;
};

/** Draws the same current at any voltage from `minimum_V` up; below, it is the resistance minimum_V / amps. */
export type CurrentLoad = Between & {
  readonly kind: "current-load";
  readonly amps: number;
  readonly minimum_V: number;
};

/** Draws the same power at any voltage from `minimum_V` up; below, it is the resistance minimum_V² / power_W. */
export type PowerLoad = Between & {
  readonly kind: "power-load";
  readonly power_W: number;
  readonly minimum_V: number;
};

/**
 * A filament lamp. Hot, its current follows voltage to the power `LAMP_EXPONENT`, and its resistance never
 * falls under `cold_ohm`. Cold (the instant of switching on) it is the plain resistance `cold_ohm`.
 */
export type Lamp = Between & {
  readonly kind: "lamp";
  readonly rated_V: number;
  readonly rated_W: number;
  readonly cold_ohm: number;
  readonly filament: "hot" | "cold";
};

/** A junction after Shockley, I = saturation_A (exp(V / (ideality · 25.9 mV)) − 1), behind a resistance, at 27 °C. */
export type Diode = {
  readonly kind: "diode";
  readonly anode: number;
  readonly cathode: number;
  readonly saturation_A: number;
  readonly ideality: number;
  readonly resistance_ohm: number;
};

/** The coil of a relay. It pulls at `pullIn_V` either way round and lets go under `dropOut_V`. */
export type Coil = Between & {
  readonly kind: "coil";
  readonly resistance_ohm: number;
  readonly pullIn_V: number;
  readonly dropOut_V: number;
};

/** A make (closed when pulled) or break (closed when released) contact; `coil` is the coil's place in `elements`. */
export type RelayContact = Between & {
  readonly kind: "contact";
  readonly coil: number;
  readonly closedWhen: "pulled" | "released";
  readonly resistance_ohm: number;
};

export type CircuitElement =
  | Supply
  | Output
  | Resistance
  | Switch
  | CurrentLoad
  | PowerLoad
  | Lamp
  | Diode
  | Coil
  | RelayContact;

/**
 * The exponent of a filament lamp's current over its voltage.
 * @source D. G. Fink and H. W. Beaty, Standard Handbook for Electrical Engineers, 11th ed. (1978), p. 22-8: a lamp
 * used off its design voltage draws (V / V design)^0.55 of its design current
 */
export const LAMP_EXPONENT = 0.55;

/**
 * A supply or resistance under this is taken as none at all: its ends are one node but for the electromotive force,
 * so that no digits are lost in a division by next to nothing. 1 µΩ is 0.06 mm of a 1 mm² wire.
 */
export const LEAST_ohm = 1e-6;

/** A closed switch or contact has at least this much, so that the same equations serve when it opens. */
export const LEAST_SWITCHED_ohm = 1e-5;

/** The two nodes of an element: plus, anode or from first. */
export function nodesOf(element: CircuitElement): readonly [number, number] {
  switch (element.kind) {
    case "supply":
    case "output":
      return [element.plus, element.minus];
    case "diode":
      return [element.anode, element.cathode];
    default:
      return [element.from, element.to];
  }
}

/** Whether an element only ties two nodes together, at a fixed difference. */
export function isIdeal(element: CircuitElement): boolean {
  return (element.kind === "supply" || element.kind === "resistance") && element.resistance_ohm < LEAST_ohm;
}
