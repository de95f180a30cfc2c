import { type ReactNode, useEffect, useRef } from "react";
import { functionOf } from "../../catalogue/functions.ts";
import type { Settings } from "../../graph/harness.ts";
import { settledFunction } from "../../match/review/cavities.ts";
import { type Item, subjectsOf } from "../../match/review/items.ts";
import { JOINT_KINDS } from "../../match/review/joints.ts";
import {
  type LeadRef,
  leadOf,
  otherSide,
  type Review,
  runsThrough,
  type SideName,
} from "../../match/review/review.ts";
import { sayConfidence } from "../../match/review/words.ts";
import { JoinDrawing } from "./join-drawing.tsx";
import { LeadView } from "./lead-view.tsx";
import { actionsOn, type ReviewAction } from "./review-keys.ts";

const BUTTONS: Readonly<Record<string, readonly [words: string, key: string]>> = {
  accept: ["Accept", "Enter"],
  "undo-decision": ["Take apart", "U"],
  swap: ["Swap with…", "S"],
  pick: ["Join with…", "J"],
  cap: ["Cap it", "C"],
  leave: ["Leave apart", "L"],
};

/** One row of the review: leads left and right, what joins them between, why, and what can be done. */
export function ReviewItem(props: {
  readonly item: Item;
  readonly review: Review;
  readonly sizes: Settings["sizes"];
  readonly isCurrent: boolean;
  /** Counts up when this row is to have the focus. */
  readonly focus: number;
  readonly swapping: "this" | "other" | null;
  readonly picker: ReactNode;
  readonly onCurrent: () => void;
  readonly onAction: (action: ReviewAction) => void;
  readonly onJoint: (joint: string | null) => void;
}) {
  const { item, review, isCurrent } = props;
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (props.focus > 0) place.current?.focus();
  }, [props.focus]);
  const sides = sidesOf(item);
  const said = sayItem(item);
  return (
    <li className={`review-item review-${item.kind}`}>
      {/* biome-ignore lint/a11y/useSemanticElements: a row of the review is no fieldset */}
      <div
        ref={place}
        role="group"
        aria-label={`${subjectsOf(item)
          .map((ref) => leadName(review, ref))
          .join(", ")}: ${said.state}`}
        aria-current={isCurrent ? "true" : undefined}
        tabIndex={isCurrent ? 0 : -1}
        data-item={item.key}
        className="review-row"
        onFocus={(event) => {
          if (event.target === event.currentTarget) props.onCurrent();
        }}
      >
        <div className="review-facing">
          <Leads side="left" refs={sides.left} {...props} />
          <div className="join-place">
            <JoinDrawing {...strandsOf(item, review, sides)} />
          </div>
          <Leads side="right" refs={sides.right} {...props} />
        </div>
        <p className="review-why">
          <b className="review-state">{said.state}</b> {said.why}
        </p>
        {trapsOf(item).map((trap) => (
          <p key={trap} className="review-trap">
            <b>Trap</b> {trap}
          </p>
        ))}
        {props.picker}
        {(isCurrent || props.swapping === "other") && !props.picker && (
          <div className="review-actions">
            {props.swapping === "other" && item.kind === "joined" ? (
              <button
                type="button"
                className="button small-button"
                onClick={() => props.onAction({ do: "swap" })}
              >
                Swap with this one
              </button>
            ) : (
              actionsOn(item).map((action) => {
                const button = BUTTONS[action];
                if (!button) return null;
                return (
                  <button
                    key={action}
                    type="button"
                    className="button small-button"
                    aria-pressed={action === "swap" && props.swapping === "this" ? true : undefined}
                    onClick={() => props.onAction({ do: action } as ReviewAction)}
                  >
                    {wordsOf(item, action, button[0])} <kbd>{button[1]}</kbd>
                  </button>
                );
              })
            )}
            {item.kind === "joined" && isCurrent && (
              <label className="review-joint">
                Joint{" "}
                <select
                  data-joint=""
                  value={item.group.joint ?? ""}
                  onChange={(event) => props.onJoint(event.target.value === "" ? null : event.target.value)}
                >
                  <option value="">as the others</option>
                  {JOINT_KINDS.map(({ id, name }) => (
                    <option key={id} value={id}>
                      {name}
                    </option>
                  ))}
                </select>
              </label>
            )}
          </div>
        )}
      </div>
    </li>
  );
}

function wordsOf(item: Item, action: string, usual: string): string {
  if (action === "accept" && item.kind === "offer-cap") return "Cap it";
  if (action !== "undo-decision") return usual;
  if (item.kind === "offer") return "Not these";
  if (item.kind === "capped") return "Take the cap off";
  return item.kind === "apart" ? "Decide again" : usual;
}

function Leads(props: {
  readonly side: SideName;
  readonly refs: readonly LeadRef[];
  readonly item: Item;
  readonly review: Review;
  readonly sizes: Settings["sizes"];
  readonly onAction: (action: ReviewAction) => void;
}) {
  const { side, refs, item, review, sizes } = props;
  const asks = item.kind === "question" && item.ref.side !== side;
  return (
    <div className={`review-leads review-leads-${side}`}>
      {refs.map((ref, index) => {
        const lead = leadOf(review, ref);
        if (!lead) return null;
        const number = asks && index < 9 ? index + 1 : undefined;
        const taken = asks && item.candidates[index]?.taken === true;
        return asks ? (
          <button
            key={ref.lead}
            type="button"
            className="lead-choice"
            onClick={() => props.onAction({ do: "choose", index })}
          >
            <LeadView side={side} lead={lead} sizes={sizes} number={number} taken={taken} />
          </button>
        ) : (
          <div key={ref.lead}>
            <LeadView side={side} lead={lead} sizes={sizes} settled={settledIn(item, review, ref)} />
          </div>
        );
      })}
    </div>
  );
}

/** What a joint has made of a function that the chart left open. */
function settledIn(item: Item, review: Review, ref: LeadRef): string {
  const lead = leadOf(review, ref);
  if (item.kind !== "joined" || !lead) return "unknown";
  const across = otherSide(ref.side);
  const partners = item.group[across].flatMap((name) => leadOf(review, { side: across, lead: name }) ?? []);
  return settledFunction(lead, partners);
}

function sidesOf(item: Item): Readonly<Record<SideName, readonly LeadRef[]>> {
  const refs = item.kind === "question" ? [item.ref, ...item.candidates] : subjectsOf(item);
  return {
    left: refs.filter((ref) => ref.side === "left"),
    right: refs.filter((ref) => ref.side === "right"),
  };
}

function strandsOf(item: Item, review: Review, sides: Readonly<Record<SideName, readonly LeadRef[]>>) {
  const asked = (ref: LeadRef) => item.kind === "question" && ref.side !== item.ref.side;
  const bare = ["missing", "open", "asked", "apart", "unused", "elsewhere"].includes(item.kind);
  const strands = (side: SideName) =>
    bare
      ? []
      : sides[side].map((ref) => ({ colour: leadOf(review, ref)?.colour ?? null, dashed: asked(ref) }));
  const through = item.kind === "joined" && item.group.from !== "harness" && runsThrough(review, item.group);
  if (through) {
    const colour = subjectsOf(item).flatMap((ref) => leadOf(review, ref)?.colour ?? [])[0] ?? null;
    return { left: [{ colour }], right: [{ colour }], middle: null };
  }
  const middle =
    item.kind === "joined"
      ? { joint: item.group.joint ?? review.joint, made: true }
      : item.kind === "offer" || item.kind === "question"
        ? { joint: review.joint, made: false }
        : item.kind === "capped" || item.kind === "offer-cap"
          ? { cap: item.ref.side, made: item.kind === "capped" }
          : null;
  return { left: strands("left"), right: strands("right"), middle };
}

function leadName(review: Review, ref: LeadRef): string {
  const lead = leadOf(review, ref);
  return `${ref.side === "left" ? "vehicle" : "new unit"} ${ref.lead}${lead?.text ? ` ${lead.text}` : ""}`;
}

/** What a row says: its state in a word or two, and why. */
export function sayItem(item: Item): { readonly state: string; readonly why: string } {
  switch (item.kind) {
    case "offer":
      return { state: `Proposed, ${sayConfidence(item.confidence)}:`, why: whyOf(item) };
    case "joined": {
      const by = { proposal: "Accepted:", person: "You joined them:", harness: "The harness has it so." }[
        item.group.from
      ];
      const isOffer = item.offer !== null && item.group.from !== "harness";
      const ends = item.group.left.length + item.group.right.length;
      const why = isOffer ? whyOf(item.offer) : ends > 2 ? `a splice of ${ends} ends.` : "";
      // A colon promises a reason.
      return { state: why === "" ? by.replace(/:$/, ".") : by, why };
    }
    case "question":
      return { state: "Which one?", why: item.why };
    case "missing":
      return { state: "Needed, and without a partner:", why: item.why };
    case "offer-cap":
      return { state: "Proposed:", why: "a spare, to be capped." };
    case "capped":
      return { state: "Capped:", why: "a spare." };
    case "apart":
      return { state: "Left apart.", why: "" };
    case "open":
      return { state: "Open:", why: "nothing is proposed for it." };
    case "asked":
      return { state: "Open:", why: "a question above asks about it." };
    case "unused":
      return { state: "Not used,", why: "as its chart says." };
    case "elsewhere":
      return { state: "Joined elsewhere:", why: `to ${item.words}.` };
  }
}

function whyOf(
  offer: Extract<Item, { kind: "offer" }> | NonNullable<Extract<Item, { kind: "joined" }>["offer"]>,
): string {
  const ends = offer.left.length + offer.right.length;
  if (ends === 2) return offer.why;
  const draws = offer.current_A === null ? "" : `; together they draw ${offer.current_A} A`;
  const name = functionOf(offer.function);
  return `${name.id === "unknown" ? "one lead" : name.name} goes to several, a splice of ${ends} ends${draws}.`;
}

function trapsOf(item: Item): readonly string[] {
  if (item.kind === "offer") return item.traps;
  return item.kind === "joined" && item.group.from !== "harness" ? (item.offer?.traps ?? []) : [];
}
