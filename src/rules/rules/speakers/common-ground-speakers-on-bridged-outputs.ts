import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { hasCommonNegative, isSpeaker, outputAt, takingPairs } from "../../shared/speakers.ts";
import { byName, isOrAre, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "common-ground-speakers-on-bridged-outputs",
    group: "speakers",
    severity: "fault",
    summary: "Every speaker on a bridged output has a minus of its own.",
    source:
      "eHow UK, a receiver with floating outputs on speakers with a common ground; that a unit of which nothing is said is bridged: from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: [
      "speaker-negatives-commoned",
      "speaker-lead-grounded",
      "speakers-crossed",
      "required-lead-missing",
    ],
  },
  *check(context) {
    const lone = new Map<string, Hung[]>();
    const shared = new Map<number, Hung[]>();
    for (const { plus, minus } of takingPairs(context)) {
      const from = outputAt(context, plus);
      if (!from || hasCommonNegative(context, from)) continue;
      const hung = { plus, minus, from };
      if (minus) push(shared, context.circuitOf(minus).circuit.id, hung);
      else if (plus.side === "vehicle") push(lone, `${plus.unit} ${from.unit}`, hung);
    }
    for (const hung of lone.values()) yield tell(context, hung);
    for (const hung of shared.values()) if (isShared(context, hung)) yield tell(context, hung);
  },
});

/** A speaker lead that a bridged output drives. */
type Hung = { readonly plus: Point; readonly minus: Point | null; readonly from: Point };

function push<K>(map: Map<K, Hung[]>, key: K, hung: Hung): void {
  const list = map.get(key);
  if (list) list.push(hung);
  else map.set(key, [hung]);
}

/** Speakers of several channels on one minus lead. Where the outputs' own minus leads meet there, another rule tells. */
function isShared(context: Context, hung: readonly Hung[]): boolean {
  if (new Set(hung.map(({ from }) => from.key)).size < 2) return false;
  const own = context
    .circuitOf(hung[0]!.minus!)
    .points.filter((point) => isSpeaker(point) && point.direction === "gives");
  return own.length < 2;
}

function tell(context: Context, hung: readonly Hung[]): Found {
  const pluses = hung.map(({ plus }) => plus).sort(byName);
  const minuses = [...new Set(hung.flatMap(({ minus }) => minus ?? []))].sort(byName);
  const returns = hung.flatMap(({ from }) => otherLead(context, from) ?? []).sort(byName);
  return {
    message: minuses.length
      ? `${sayPoints(context, pluses)} hang on bridged outputs and share one minus lead, at ${sayPoints(context, minuses)}.`
      : `${sayPoints(context, pluses)} ${isOrAre(pluses)} on a bridged output, and the chart has no minus lead that belongs to ${pluses.length === 1 ? "it" : "them"}.`,
    consequence:
      "Speakers that come back by one common lead or by the frame tie bridged outputs together: they overheat, shut down, or die.",
    remedy:
      "Run a pair to each speaker, or put an adapter between that is made for speakers with a common ground; it costs power.",
    about: [...new Set([...pluses, ...minuses, ...returns])].map((point) => point.at),
  };
}

/** The other lead of an output's channel. */
function otherLead(context: Context, output: Point): Point | undefined {
  const own = output.unit === null ? [] : (context.points.byUnit.get(output.unit) ?? []);
  return own.find(
    (point) =>
      isSpeaker(point) &&
      point.direction === "gives" &&
      point.means.channel === output.means.channel &&
      point.means.polarity !== output.means.polarity,
  );
}
