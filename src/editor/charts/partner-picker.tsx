import { useEffect, useMemo, useRef, useState } from "react";
import { type LeadRef, leadOf, otherSide, type Review, stateOf } from "../../match/review/review.ts";
import { sayFunction } from "../../match/review/words.ts";
import { PickList } from "../shell/pick-list.tsx";
import { Swatch } from "../shell/swatch.tsx";

/** Picks a lead of the other side by typing part of its name, its function or its colour. */
export function PartnerPicker(props: {
  readonly review: Review;
  readonly lead: LeadRef;
  readonly onPick: (partner: LeadRef) => void;
}) {
  const { review, lead } = props;
  const [typed, setTyped] = useState("");
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.querySelector("input")?.focus(), []);
  const side = otherSide(lead.side);
  const picks = useMemo(() => {
    const wanted = typed.trim().toLowerCase().split(/\s+/);
    return review.charts[side].leads
      .filter(({ name }) => stateOf(review, { side, lead: name }) !== "elsewhere")
      .filter((one) => {
        const text = `${one.name} ${one.text} ${sayFunction(one)} ${one.colourText}`.toLowerCase();
        return wanted.every((word) => text.includes(word));
      })
      .sort((a, b) => rank(review, { side, lead: a.name }) - rank(review, { side, lead: b.name }))
      .slice(0, 40)
      .map((one) => ({
        id: one.name,
        content: (
          <span className="partner">
            <b>{one.name}</b> <span>{sayFunction(one)}</span> <Swatch colour={one.colour} />
            <em>
              {stateOf(review, { side, lead: one.name }) === "joined" ? "joined already: makes a splice" : ""}
            </em>
          </span>
        ),
      }));
  }, [review, side, typed]);
  return (
    <div ref={place} className="review-picker">
      <PickList
        label={`Join ${lead.lead} ${leadOf(review, lead)?.text ?? ""} with`}
        hint={side === "left" ? "a lead of the vehicle" : "a lead of the new unit"}
        none="No lead fits that."
        typed={typed}
        onType={setTyped}
        picks={picks}
        onPick={(name) => props.onPick({ side, lead: name })}
      />
    </div>
  );
}

/** Leads that are free come first. */
function rank(review: Review, ref: LeadRef): number {
  const state = stateOf(review, ref);
  return state === "open" ? 0 : state === "joined" ? 2 : 1;
}
