import type { Point } from "../../../electrical/points.ts";
import type { Load, Module, Supply } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { byName, compareNames, nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "wrong-voltage",
    group: "feeds",
    severity: "fault",
    summary: "Every part is made for the volts that it is fed with.",
    source:
      "makers' workshop manuals on cameras (factory cameras on a supply of about 6 V); otherwise common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "sizes", "settings"],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind === "supply") {
        const found = judgeSupply(context, part);
        if (found) yield found;
      } else if ((part.kind === "load" || part.kind === "module") && part.voltage_V !== "unknown") {
        const found = judgePart(context, part, part.voltage_V);
        if (found) yield found;
      }
    }
  },
});

type Range = Exclude<Load["voltage_V"], "unknown">;

function judgePart(context: Context, part: Load | Module, { least_V, most_V }: Range): Found | null {
  for (const point of inputsOf(context, part)) {
    for (const { source } of context.feeds.feeds(context.circuitOf(point))) {
      const volts = voltsOf(context, source);
      if (volts === null || (volts >= least_V && volts <= most_V)) continue;
      return {
        message: `${part.designation} is made for ${least_V} to ${most_V} V, and ${sayPoint(context, point)} is fed from ${sayPoint(context, source)} of a ${volts} V system.`,
        consequence:
          volts > most_V
            ? "Too many volts destroy it, at once or within hours."
            : "It never starts, or works now and then.",
        remedy: `Feed ${part.designation} through a converter of the right ratio, or use a part made for ${volts} V.`,
        about: [{ part: part.id }, point.at],
      };
    }
  }
  return null;
}

function inputsOf(context: Context, part: Load | Module): readonly Point[] {
  if (part.kind === "module")
    return (context.points.byUnit.get(part.id) ?? [])
      .filter(
        (point) =>
          point.direction === "takes" && (point.means.group === "feed" || point.means.id === "camera-power"),
      )
      .sort(byName);
  const [plus, minus] = [1, 2].map((number) => context.points.pointAt(part.id, number)!);
  return part.polarised ? [plus!] : [plus!, minus!];
}

/** Nominal volts of what feeds; `null` for an output of a box, which may be anything. */
function voltsOf(context: Context, source: Point): number | null {
  if (source.part.kind === "supply")
    return isInSeries(context, source.part) ? null : nominal_V(context, source.part);
  if (source.means.id === "sensor-supply" || source.means.id === "usb-power") return null;
  return source.side === "vehicle" &&
    source.part.kind === "connector" &&
    source.part.belongsTo.module === null
    ? context.harness.settings.systemVoltage_V
    : null;
}

/** A battery of 12.6 V is one of 12 V. */
function nominal_V(context: Context, { voltage_V }: Supply): number {
  const { systemVoltage_V } = context.harness.settings;
  const share = voltage_V / systemVoltage_V;
  return share > 0.75 && share < 1.3 ? systemVoltage_V : voltage_V;
}

/** The only battery of a harness gives other volts than the harness says of its system. */
function judgeSupply(context: Context, supply: Supply): Found | null {
  const { systemVoltage_V } = context.harness.settings;
  if (nominal_V(context, supply) === systemVoltage_V) return null;
  const supplies = context.parts.filter((part) => part.kind === "supply");
  if (supplies.some((other) => nominal_V(context, other) === systemVoltage_V) || isInSeries(context, supply))
    return null;
  const first = [...supplies].sort((a, b) => compareNames(a.designation, b.designation))[0];
  if (first !== supply || !context.points.wiresAt(context.points.pointAt(supply.id, 1)!).length) return null;
  return {
    message: `${supply.designation} gives ${supply.voltage_V} V, and the harness is set to a ${systemVoltage_V} V system.`,
    consequence:
      "Lamps, relays and units are chosen for the wrong volts, and every figure of the harness is off.",
    remedy: `Find out what the vehicle has, and set the system's volts or ${nameOf(context.points.pointAt(supply.id, 1)!)} to it.`,
    about: [{ part: supply.id }],
  };
}

/** Stands on another battery's post: together they give more. */
function isInSeries(context: Context, supply: Supply): boolean {
  return [1, 2].some((number) =>
    context.points
      .circuitAt(supply.id, number)
      .points.some(
        ({ part, contact }) => part.kind === "supply" && part !== supply && contact.number === 3 - number,
      ),
  );
}
