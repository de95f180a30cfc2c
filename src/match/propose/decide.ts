import type { InContext } from "./context.ts";
import type { Pair } from "./pairs.ts";

/** A partner that is not this near to the best one is no rival; for open wordings one further off is. */
const NEARLY = 0.72;
const NEARLY_OPEN = 0.5;
/** From here on functions of two names are taken for one where nothing else competes. */
const AS_GOOD_AS_SAME = 0.79;
/** From here on a lead that carries no power is joined though its wording is open. */
const LIKELY = 0.6;
/** From here on a power lead of open wording is joined, where in no sense of it the join would be a wrong one. */
const OPEN_BUT_HARMLESS = 0.7;
/** Below this a pair is not even asked about. */
const WORTH_ASKING = 0.15;

export type Verdict =
  | { readonly kind: "join"; readonly confidence: number }
  | { readonly kind: "ask" }
  | { readonly kind: "apart" };

/**
 * Says of an assigned pair whether it is joined, asked about, or left apart.
 * @param rivals other pairs of the same leads that are nearly as likely and not settled elsewhere
 */
export function decide(pair: Pair, left: InContext, right: InContext, rivals: readonly Pair[]): Verdict {
  const bothCertain = left.reading.certain && right.reading.certain;
  const [a] = left.reading.candidates;
  const [b] = right.reading.candidates;
  if (pair.veto) {
    // Two outputs may be a chart written from the other side; the rest is never made and not worth a question.
    return pair.veto === "two outputs" && pair.likely >= LIKELY ? { kind: "ask" } : { kind: "apart" };
  }
  if (bothCertain && a && b && a.function === b.function) {
    return { kind: "join", confidence: Math.min(0.99, 0.94 + pair.score - pair.likely) };
  }
  const isFree = rivals.length === 0;
  if (pair.sameWords && isFree && (pair.likely > 0 || !pair.power)) {
    return pair.function === "unknown"
      ? { kind: "join", confidence: 0.75 }
      : { kind: "join", confidence: 0.9 };
  }
  if (bothCertain && isFree && pair.likely >= AS_GOOD_AS_SAME) return { kind: "join", confidence: 0.85 };
  if (pair.sameSenses && isFree && !contradictsItself(left, right)) return { kind: "join", confidence: 0.85 };
  if (pair.power && pair.harmless && isFree && pair.likely >= OPEN_BUT_HARMLESS)
    return { kind: "join", confidence: pair.likely };
  if (!pair.power && isFree && pair.likely >= LIKELY) return { kind: "join", confidence: pair.likely };
  return pair.likely >= WORTH_ASKING || pair.sameWords ? { kind: "ask" } : { kind: "apart" };
}

/** Words that leave more than three senses open say too little to join by. */
function contradictsItself(left: InContext, right: InContext): boolean {
  return [left, right].some(({ reading }) => reading.candidates.filter((one) => one.share > 0.05).length > 3);
}

/** Pairs that contend with one for its leads: other partners that are at least half as likely. */
export function rivalsOf(pair: Pair, isCertain: boolean, pairs: readonly Pair[]): readonly Pair[] {
  const near = (isCertain ? NEARLY : NEARLY_OPEN) * pair.likely;
  return pairs.filter(
    (other) =>
      other !== pair &&
      other.veto === null &&
      (other.left === pair.left || other.right === pair.right) &&
      (other.likely >= near || (other.sameWords && !pair.sameWords)) &&
      other.likely >= WORTH_ASKING,
  );
}

export { WORTH_ASKING };
