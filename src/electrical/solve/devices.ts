import {
  type Circuit,
  type CircuitElement,
  isIdeal,
  LAMP_EXPONENT,
  LEAST_ohm,
  LEAST_SWITCHED_ohm,
} from "./circuit.ts";

/** What law an element follows; numbers, since this is what the inner loop chooses by. */
export const IDEAL = 0;
export const LINEAR = 1;
const CURRENT = 2;
const POWER = 3;
const LAMP = 4;
const DIODE = 5;
const OUTPUT = 6;

/** Elements as columns of numbers. What `first` to `third` mean depends on the law. */
export type DeviceColumns = {
  readonly law: Uint8Array;
  readonly first: Float64Array;
  readonly second: Float64Array;
  readonly third: Float64Array;
};

export const deviceColumns = (count: number): DeviceColumns => ({
  law: new Uint8Array(count),
  first: new Float64Array(count),
  second: new Float64Array(count),
  third: new Float64Array(count),
});

export type Devices = DeviceColumns & {
  readonly isLinear: boolean;
  readonly hasPower: boolean;
};

/**
 * Thermal voltage at 27 °C, the temperature that diode figures are usually given for.
 * @source k and e as fixed by the SI (2019)
 */
export const THERMAL_V = (1.380649e-23 * 300.15) / 1.602176634e-19;

/**
 * A leak beside every junction, so that nothing behind a blocking diode hangs in the air: 12 nA at 12 V, less than power
 * diodes leak. Beside a milliohm, a much smaller one would drown in the rounding of ordinary simulators.
 */
export const DIODE_LEAK_S = 1e-9;

/** How steeply an output that is at its limit gives way: dead shorted, it delivers a thousandth more than that. */
export const limitSlope_S = (limit_A: number, emf_V: number): number => (limit_A * 1e-3) / Math.max(emf_V, 1);

/**
 * The least slope that Newton's step takes for a load, over what the load's resistance would be at its lowest voltage.
 * It steers the way to the answer only; the answer does not hold it.
 */
const STEER = 1e-7;

/**
 * Reads the figures of all elements for one state of the relays.
 * @param pulled [elements] 1 where a coil is pulled
 * @param columns of as many elements; written here
 */
export function readDevices(circuit: Circuit, pulled: Uint8Array, columns: DeviceColumns): Devices {
  const count = circuit.elements.length;
  const { law, first, second, third } = columns;
  law.fill(IDEAL);
  second.fill(0);
  let isLinear = true;
  let hasPower = false;
  for (let index = 0; index < count; index++) {
    const element = circuit.elements[index]!;
    if (isIdeal(element)) continue;
    law[index] = LINEAR;
    switch (element.kind) {
      case "supply":
        first[index] = 1 / element.resistance_ohm;
        second[index] = element.emf_V;
        continue;
      case "resistance":
      case "coil":
        first[index] = 1 / element.resistance_ohm;
        continue;
      case "switch":
      case "contact":
        first[index] = isOpen(element, pulled) ? 0 : 1 / Math.max(element.resistance_ohm, LEAST_SWITCHED_ohm);
        continue;
      case "current-load":
        law[index] = CURRENT;
        first[index] = element.amps;
        second[index] = element.minimum_V;
        break;
      case "power-load":
        law[index] = POWER;
        first[index] = element.power_W;
        second[index] = element.minimum_V;
        hasPower = true;
        break;
      case "lamp":
        if (element.filament === "cold") {
          first[index] = 1 / element.cold_ohm;
          continue;
        }
        law[index] = LAMP;
        first[index] = element.rated_W / element.rated_V ** (1 + LAMP_EXPONENT);
        second[index] = lampKnee_V(element);
        third[index] = element.cold_ohm;
        break;
      case "diode":
        law[index] = DIODE;
        first[index] = element.saturation_A;
        second[index] = element.ideality * THERMAL_V;
        third[index] = Math.max(element.resistance_ohm, LEAST_ohm);
        break;
      case "output":
        law[index] = OUTPUT;
        first[index] = 1 / Math.max(element.resistance_ohm, LEAST_ohm);
        second[index] = element.emf_V;
        third[index] = element.limit_A;
        break;
    }
    isLinear = false;
  }
  return { law, first, second, third, isLinear, hasPower };
}

/** Whether an element parts its two nodes. */
export function isOpen(element: CircuitElement, pulled: Uint8Array): boolean {
  if (element.kind === "switch") return !element.closed;
  if (element.kind === "contact") return (element.closedWhen === "pulled") !== (pulled[element.coil] === 1);
  return false;
}

/** The volts under which a hot filament's law would give less than its cold resistance. */
export function lampKnee_V(lamp: { rated_V: number; rated_W: number; cold_ohm: number }): number {
  const hot_ohm = lamp.rated_V ** 2 / lamp.rated_W;
  return lamp.rated_V * (lamp.cold_ohm / hot_ohm) ** (1 / (1 - LAMP_EXPONENT));
}

/** Amperes and slope of an element, as `evaluate` leaves them. */
export type Reading = { amps: number; slope_S: number };

/**
 * What an element that is not ideal draws at a voltage from its first node to its second.
 * @param powerOn false leaves out constant-power loads
 * @param reading amperes from the first node to the second, and their growth per volt; written here
 */
export function evaluate(
  devices: Devices,
  index: number,
  volts: number,
  powerOn: boolean,
  reading: Reading,
): void {
  const first = devices.first[index]!;
  const second = devices.second[index]!;
  switch (devices.law[index]) {
    case LINEAR:
      reading.amps = first * (volts - second);
      reading.slope_S = first;
      return;
    case CURRENT: {
      const slope = first / second;
      const full = volts >= second;
      reading.amps = full ? first : slope * volts;
      reading.slope_S = full ? slope * STEER : slope;
      return;
    }
    case POWER: {
      const slope = first / (second * second);
      const full = volts >= second;
      if (!powerOn) {
        // Hardly anything, but not nothing, or the way to what only this load joins would not be found.
        reading.slope_S = slope * STEER;
        reading.amps = volts * reading.slope_S;
        return;
      }
      reading.amps = full ? first / volts : slope * volts;
      reading.slope_S = full ? -first / (volts * volts) : slope;
      return;
    }
    case LAMP: {
      const size = Math.abs(volts);
      if (size <= second) {
        reading.slope_S = 1 / devices.third[index]!;
        reading.amps = volts * reading.slope_S;
        return;
      }
      const amps = first * size ** LAMP_EXPONENT;
      reading.amps = volts < 0 ? -amps : amps;
      reading.slope_S = (LAMP_EXPONENT * amps) / size;
      return;
    }
    case DIODE:
      evaluateDiode(first, second, devices.third[index]!, volts, reading);
      return;
    case OUTPUT: {
      const limit = devices.third[index]!;
      const free = first * (second - volts);
      const slope = limitSlope_S(limit, second);
      const limited = free > limit && slope < first;
      reading.amps = limited ? -(limit + slope * (second - limit / first - volts)) : -free;
      reading.slope_S = limited ? slope : first;
      return;
    }
  }
}

/** The slope that Newton's step may fall back on where a constant-power load's own, which is negative, leads nowhere. */
export function steerSlope_S(devices: Devices, index: number): number {
  return (devices.first[index]! / devices.second[index]! ** 2) * STEER;
}

/** The junction and its series resistance share the voltage; Newton on the junction's part, from above, where it cannot overshoot. */
function evaluateDiode(
  saturation_A: number,
  scale_V: number,
  resistance_ohm: number,
  volts: number,
  reading: Reading,
): void {
  let junction = volts;
  if (volts > 0) {
    const most = scale_V * Math.log1p(volts / (resistance_ohm * saturation_A));
    if (most < junction) junction = most;
  }
  let amps = 0;
  let slope = 0;
  for (let round = 0; round < 40; round++) {
    const growth = saturation_A * Math.exp(junction / scale_V);
    amps = growth - saturation_A + DIODE_LEAK_S * junction;
    slope = growth / scale_V + DIODE_LEAK_S;
    const step = (junction + resistance_ohm * amps - volts) / (1 + resistance_ohm * slope);
    junction -= step;
    if (Math.abs(step) <= 1e-15 * (Math.abs(junction) + scale_V)) break;
  }
  // Where the resistance rules, its part of the voltage holds more digits than the exponential.
  const byResistance = (volts - junction) / resistance_ohm;
  reading.amps = resistance_ohm * slope > 1 ? byResistance : amps;
  reading.slope_S = slope / (1 + resistance_ohm * slope);
}
