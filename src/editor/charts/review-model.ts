import type { countOf, Item, Sections } from "../../match/review/items.ts";
import * as model from "../../match/review/review.ts";
import type { ReviewAction } from "./review-keys.ts";

/** The review after an action on one of its rows; the same where the action does not apply to it. */
export function applyAction(review: model.Review, item: Item, action: ReviewAction): model.Review {
  switch (action.do) {
    case "accept":
      if (item.kind === "offer") return model.acceptGroup(review, item);
      return item.kind === "offer-cap" ? model.decide(review, item.ref, "capped") : review;
    case "undo-decision":
      if (item.kind === "offer") return model.refuse(review, item);
      if (item.kind === "joined") return model.unjoin(review, item.group);
      return item.kind === "capped" || item.kind === "apart" ? model.release(review, item.ref) : review;
    case "cap":
      return "ref" in item ? model.decide(review, item.ref, "capped") : review;
    case "leave":
      return "ref" in item ? model.decide(review, item.ref, "apart") : review;
    case "choose": {
      const partner = item.kind === "question" ? item.candidates[action.index] : undefined;
      return item.kind === "question" && partner ? model.join(review, item.ref, partner) : review;
    }
    default:
      return review;
  }
}

/** What still waits for a person's word: needed leads first, then questions. */
export function leftToDo(sections: Sections): readonly Item[] {
  return [...sections.missing, ...sections.questions];
}

type Counts = ReturnType<typeof countOf>;
const of = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;

/** "Accept 12 joins and 3 caps". */
export function sayCertain({ offers, offeredCaps }: Counts): string {
  const parts = [offers > 0 ? of(offers, "join") : "", offeredCaps > 0 ? of(offeredCaps, "cap") : ""];
  return `Accept ${parts.filter(Boolean).join(" and ")}`;
}

/** "Make 14 joints and 3 caps": what the last button does. */
export function sayMake({ joined, capped }: Counts): string {
  const parts = [joined > 0 ? of(joined, "joint") : "", capped > 0 ? of(capped, "cap") : ""].filter(Boolean);
  return parts.length === 0 ? "Put down both connectors" : `Make ${parts.join(" and ")}`;
}
