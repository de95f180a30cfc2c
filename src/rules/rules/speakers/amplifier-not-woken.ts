import { wakes } from "../../../electrical/operate/box-contacts.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Module } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { byName, isOrAre, sayPoints, sayStates } from "../../words.ts";

export default defineRule({
  meta: {
    id: "amplifier-not-woken",
    group: "speakers",
    severity: "fault",
    summary: "A factory amplifier that is fed sound is woken whenever the source plays.",
    source: "a how-to page on what fits what: its most repeated cause of silence after a receiver is changed",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
    brings: ["same-function-unjoined", "spare-not-capped", "loose-lead"],
  },
  *check(context) {
    for (const [unit, own] of context.points.byUnit) {
      const module = moduleNamed(context, unit);
      // Where its plug is mated with one of the same wording, the other one stands for its contacts.
      const standIns = context.points.standIns.get(unit) ?? [];
      const points = standIns.length ? [...own, ...standIns] : own;
      if (module?.wakes === "by-signal") continue;
      const isAmplifier = module?.side === "vehicle" && module.role === "amplifier";
      // The leads of a vehicle that names no box: a turn-on lead among them leads to its amplifier.
      const leads = points.filter((point) => isTurnOn(context, point, isAmplifier));
      if (unit !== "vehicle" && !isAmplifier) continue;
      if (!leads.length && !isAmplifier) continue;
      const wakeLess = leads.length ? leads : quietData(context, points);
      if (!wakeLess.length || wakeLess.some((point) => isWoken(context, point, leads.length > 0))) continue;
      const isFed =
        standIns.some((point) => givesSound(point)) || points.some((point) => isFedSound(context, point));
      if (!isFed) continue;
      const lead = [...wakeLess].sort(byName);
      const times = sayStates([
        ...new Set(leads.flatMap((one) => context.feeds.liveAt(context.circuitOf(one)))),
      ]);
      yield {
        message: leads.length
          ? `${module ? `${module.designation} is fed sound, but ` : "The vehicle's amplifier is fed sound, but "}${sayPoints(context, lead)} ${isOrAre(lead)} ${times ? `live only ${times}` : "not given volts"}.`
          : `${module!.designation} is fed sound and has no turn-on lead; its data lines ${sayPoints(context, lead)} lead nowhere.`,
        consequence: "The amplifier never wakes: silence, with nothing wrong on the speaker side.",
        remedy: leads.length
          ? "Feed its turn-on from the receiver's amplifier turn-on, at the level that the vehicle uses."
          : "Wake it as the vehicle did: by an interface module that speaks its data bus.",
        about: [...lead.map((point) => point.at), ...(module ? [{ part: module.id }] : [])],
      };
    }
  },
});

function moduleNamed(context: Context, unit: string): Module | null {
  const part = context.harness.parts[unit as Module["id"]];
  return part?.kind === "module" ? part : null;
}

/** Of an amplifier, whatever wakes it; of leads that name no box, one that is there and can mean nothing else. */
function isTurnOn(context: Context, point: Point, isAmplifier: boolean): boolean {
  if (point.direction !== "takes" || context.isLeftOut(point)) return false;
  if (isAmplifier) return wakes(point.means);
  if (point.means.id !== "amplifier-turn-on") return false;
  return Boolean(point.contact.cavity?.lead) || context.points.wiresAt(point).length > 0;
}

/** Data lines of a box, all of them joined to nothing. */
function quietData(context: Context, points: readonly Point[]): readonly Point[] {
  const data = points.filter((point) => point.means.group === "data");
  return data.every((point) => context.isAlone(point)) ? data : [];
}

function isWoken(context: Context, point: Point, byVolts: boolean): boolean {
  if (!byVolts) return false;
  const circuit = context.circuitOf(point);
  if (context.feeds.liveAt(circuit).some((state) => WITH_SOUND.has(state))) return true;
  // Of what nobody has named, nobody can say that it does not give.
  return circuit.points.some((other) => other !== point && (other.direction === "both" || mayGive(other)));
}

const WITH_SOUND: ReadonlySet<string> = new Set(["off", "accessory", "run", "unit-on", "at-times"]);

function mayGive(point: Point): boolean {
  return point.means.id === "unknown" && point.contact.cavity !== null && point.direction !== "takes";
}

function isSound({ means }: Point): boolean {
  return means.group === "speaker" || means.group === "line-level";
}

function givesSound(point: Point): boolean {
  return isSound(point) && point.direction === "gives";
}

function isFedSound(context: Context, point: Point): boolean {
  if (!isSound(point) || point.direction === "gives") return false;
  return context.points.partners(point).some((other) => other.unit !== point.unit && givesSound(other));
}
