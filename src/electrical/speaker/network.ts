import { digits, type Figure } from "../figure.ts";
import { requireNotNegative, requirePositive } from "../require.ts";

/** What hangs on one amplifier channel. Impedances are nominal and taken as resistances. */
export type SpeakerNet =
  | {
      readonly kind: "speaker";
      readonly name: string;
      /** Nominal, Ω, above 0. */
      readonly impedance_ohm: number;
      /** Both wires of the lead to this speaker, Ω, 0 or more. */
      readonly wire_ohm: number;
    }
  | { readonly kind: "series" | "parallel"; readonly of: readonly SpeakerNet[] };

const SOURCE = "circuit law, nominal impedance taken as a resistance";
const DOUBT = "a real speaker's impedance moves with frequency, often below its nominal figure";

/**
 * Impedance that the amplifier sees, wires included.
 * @returns Ω
 * @throws RangeError for an empty network, an impedance not above 0, or a wire below 0
 */
export function impedanceSeen(net: SpeakerNet): Figure {
  const value = solve(net);
  return {
    value,
    unit: "Ω",
    formula: `${write(net)} = ${digits(value)} Ω`,
    table: null,
    source: SOURCE,
    doubt: DOUBT,
  };
}

export type Cone = {
  readonly name: string;
  /** Across the speaker itself, behind its wire. */
  readonly volts: number;
  readonly power: Figure;
};

/**
 * What arrives at each cone of a network.
 * @param amplifier_V root-mean-square volts at the amplifier's terminals, 0 or more
 * @returns one entry a speaker, in the order of the network; watts
 * @throws RangeError as `impedanceSeen`, and for a negative voltage
 */
export function powerAtCones(net: SpeakerNet, amplifier_V: number): readonly Cone[] {
  requireNotNegative("amplifier_V", amplifier_V);
  solve(net);
  const cones: Cone[] = [];
  spread(net, amplifier_V, cones);
  return cones;
}

function solve(net: SpeakerNet): number {
  if (net.kind === "speaker") {
    requirePositive(`impedance of ${net.name}`, net.impedance_ohm);
    requireNotNegative(`wire of ${net.name}`, net.wire_ohm);
    return net.impedance_ohm + net.wire_ohm;
  }
  if (net.of.length === 0) throw new RangeError("a speaker network without a speaker");
  const parts = net.of.map(solve);
  return net.kind === "series"
    ? parts.reduce((sum, part) => sum + part, 0)
    : 1 / parts.reduce((sum, part) => sum + 1 / part, 0);
}

function spread(net: SpeakerNet, volts: number, cones: Cone[]): void {
  if (net.kind === "speaker") {
    const current_A = volts / (net.impedance_ohm + net.wire_ohm);
    const value = current_A ** 2 * net.impedance_ohm;
    cones.push({
      name: net.name,
      volts: current_A * net.impedance_ohm,
      power: {
        value,
        unit: "W",
        formula: `P = (U / (Z + R))² · Z = (${digits(volts)} V / (${digits(net.impedance_ohm)} + ${digits(net.wire_ohm)}) Ω)² × ${digits(net.impedance_ohm)} Ω = ${digits(value)} W`,
        table: null,
        source: SOURCE,
        doubt: DOUBT,
      },
    });
    return;
  }
  const whole_ohm = solve(net);
  for (const part of net.of) {
    spread(part, net.kind === "series" ? (volts * solve(part)) / whole_ohm : volts, cones);
  }
}

function write(net: SpeakerNet): string {
  if (net.kind === "speaker") {
    return net.wire_ohm === 0
      ? digits(net.impedance_ohm)
      : `(${digits(net.impedance_ohm)} + ${digits(net.wire_ohm)} wire)`;
  }
  const parts = net.of.map(write);
  return parts.length === 1 ? parts[0]! : `(${parts.join(net.kind === "series" ? " + " : " ∥ ")})`;
}
