import type { Point } from "../../../electrical/points.ts";
import type { PartId, Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import {
  type Consumer,
  consumersOf,
  copperFrom,
  drawn_A,
  isFrame,
  isShield,
  pointsAt,
  shieldWires,
} from "../../shared/grounding.ts";
import { byName, compareNames, nameOf, sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "return-through-shield",
    group: "grounds",
    severity: "danger",
    summary: "No unit's current goes back through the shield of a line, video or antenna lead.",
    source: "an owner's report of line plugs that melted; the pattern: common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "cables"],
    fixable: false,
    brings: [
      "unit-without-ground",
      "same-function-unjoined",
      "required-lead-missing",
      "ground-thinner-than-feed",
    ],
  },
  *check(context) {
    const shields = shieldWires(context.harness);
    for (const consumer of consumersOf(context)) {
      if (!consumer.grounds.length && !consumer.shields.length) continue;
      if (isGrounded(context, consumer, shields)) {
        const lone = whatIf(context, consumer);
        if (lone) yield lone;
        continue;
      }
      const way = shieldWay(context, consumer, shields);
      if (!way) continue;
      const amps = drawn_A(consumer);
      if (isFedByItsLead(context, consumer)) continue;
      yield {
        severity: amps !== null && amps <= BORNE_A ? "weak" : "danger",
        message: `${consumer.name} has no way back to the frame but through ${way.words}${amps === null ? "" : `, for ${Number(amps.toPrecision(3))} A`}.`,
        consequence:
          "A shield is thin: its plugs and its input stage heat up and melt, and the picture or the sound is disturbed by all that the unit draws.",
        remedy: `Give ${consumer.name} a ground lead of its own to bare metal first, as thick as its feed. Then look at the shield and its plugs, and replace what has been hot.`,
        about: [
          ...(consumer.grounds.length ? consumer.grounds.map(({ at }) => at) : [consumer.feeds[0]!.at]),
          ...way.about.map(({ at }) => at),
        ],
      };
    }
  },
});

/** A small camera's current does a shield no harm, but it disturbs the picture. @source a threshold of our own */
const BORNE_A = 0.5;

/** An antenna's amplifier gets its little current by the lead that it amplifies: so it is made. */
function isFedByItsLead({ harness }: Context, consumer: Consumer): boolean {
  const part = harness.parts[consumer.id as PartId];
  return part?.kind === "load" && part.type === "antenna" && (drawn_A(consumer) ?? 0) <= BORNE_A;
}

/** From here on a lost ground would burn the shield that takes its place. @source a threshold of our own */
const BURNS_A = 5;

/** What would happen if the one ground lead of a big unit came off, where charts say that shields would take its current. */
function whatIf(context: Context, consumer: Consumer): Found | null {
  const amps = drawn_A(consumer);
  if (consumer.module?.signalGround !== "joined" || amps === null || amps < BURNS_A) return null;
  const wires = consumer.grounds.flatMap((point) => context.points.wiresAt(point));
  const [lone, second] = wires;
  if (!lone || second) return null;
  for (const shield of [...consumer.shields].sort(byName)) {
    const far = context.points
      .partners(shield)
      .filter((point) => isShield(point) && point.unit !== consumer.id)
      .find(
        (point) =>
          context.moduleOf(point)?.signalGround === "joined" && isGroundedWithout(context, point, lone),
      );
    if (!far) continue;
    return {
      severity: "tidy",
      message: `${consumer.name} has one ground lead, ${sayWire(lone)}. Should it come off, ${Number(amps.toPrecision(3))} A go back through the shield at ${nameOf(shield)} to ${nameOf(far)}.`,
      consequence: "Then the line plugs melt before anybody looks for a loose ground.",
      remedy: `Make ${lone.designation} fast at both ends, and look at it whenever the loom is open; a second ground lead takes the risk away.`,
      about: [{ wire: lone.id }, shield.at],
    };
  }
  return null;
}

function isGroundedWithout(context: Context, point: Point, without: Wire): boolean {
  const own = context.points.byUnit.get(point.unit ?? "") ?? [];
  const grounds = own.filter((one) => one.means.group === "ground" && !isShield(one));
  if (!grounds.length) return false;
  const starts = grounds.flatMap(({ landings }) => landings);
  const reached = copperFrom(context, starts, { wire: (wire) => wire !== without, fuses: true });
  return pointsAt(context, reached).some(isFrame);
}

/** Real copper leads from a ground contact of it to the frame, or a switch or relay lets it. */
function isGrounded(context: Context, { grounds }: Consumer, shields: ReadonlySet<string>): boolean {
  return grounds.some((point) => {
    const circuit = context.circuitOf(point);
    const sources = context.grounds.feeds(circuit);
    if (!sources.some(({ source }) => isFrame(source))) return false;
    if (!circuit.circuit.wires.some((wire) => shields.has(wire))) return true;
    const reached = copperFrom(context, point.landings, { wire: ({ id }) => !shields.has(id), fuses: true });
    const points = pointsAt(context, reached);
    // Behind a relay or a diode lies another circuit: what is met there is copper enough.
    return (
      points.some(isFrame) ||
      sources.some(
        ({ source }) =>
          isFrame(source) && !circuit.points.includes(source) && !isBehindFuse(context, source, reached),
      )
    );
  });
}

function isBehindFuse(context: Context, source: Point, reached: ReadonlySet<string>): boolean {
  return context.circuitOf(source).circuit.contacts.some((key) => reached.has(key));
}

type Way = { readonly words: string; readonly about: readonly Point[] };

/** The shield by which it is grounded all the same; `null` where there is none, and the unit is dead. */
function shieldWay(context: Context, consumer: Consumer, shields: ReadonlySet<string>): Way | null {
  const isolated = consumer.module?.signalGround === "isolated";
  const starts = isolated ? consumer.grounds : [...consumer.grounds, ...consumer.shields];
  for (const start of starts) {
    const { circuit, points } = context.circuitOf(start);
    const screens = circuit.wires.filter((wire) => shields.has(wire));
    const others = points.filter((point) => point.unit !== consumer.id);
    const isOwnShield = consumer.shields.includes(start);
    const far = others.filter((point) => isShield(point) && endsOnGround(context, point));
    const frames = context.grounds
      .feeds({ circuit, points, caps: [] })
      .filter(({ source }) => isFrame(source));
    if (far.length) {
      far.sort(byName);
      return { words: sayList([...far.map(nameOf)], 3) + wiresIn(context, screens), about: far.slice(0, 3) };
    }
    if (frames.length && (screens.length || isOwnShield)) {
      const wires = screens.length ? screens : circuit.wires;
      return { words: `the shield ${sayWires(context, wires)}`, about: isOwnShield ? [start] : [] };
    }
  }
  return null;
}

/** The box behind a shield's far end joins it to its own ground, and has one. */
function endsOnGround(context: Context, point: Point): boolean {
  const module = context.moduleOf(point);
  if (module?.signalGround === "isolated" || point.unit === null) return false;
  if (point.side === "vehicle") return true;
  const own = context.points.byUnit.get(point.unit) ?? [];
  return own.some(
    (other) =>
      other.means.group === "ground" && !isShield(other) && context.grounds.isLive(context.circuitOf(other)),
  );
}

function wiresIn(context: Context, wires: readonly string[]): string {
  return wires.length ? `, by the shield ${sayWires(context, wires)}` : "";
}

function sayWires(context: Context, ids: readonly string[]): string {
  const wires = Object.values(context.harness.wires).filter(({ id }) => ids.includes(id));
  wires.sort((a, b) => compareNames(a.designation, b.designation));
  return sayList(wires.map(sayWire), 3);
}
