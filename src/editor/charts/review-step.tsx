import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from "react";
import { useStore } from "zustand";
import {
  acceptCertain,
  countOf,
  type Item,
  joinKey,
  SECTIONS,
  type SectionName,
  sectionsOf,
} from "../../match/review/items.ts";
import { JOINT_KINDS } from "../../match/review/joints.ts";
import * as model from "../../match/review/review.ts";
import { useEditor } from "../state/use-editor.ts";
import type { ChartsDesk } from "./desk.ts";
import { PartnerPicker } from "./partner-picker.tsx";
import { ReviewItem } from "./review-item.tsx";
import { actionOf, type ReviewAction } from "./review-keys.ts";
import { applyAction, leftToDo, sayCertain, sayMake } from "./review-model.ts";
import "./review.css";

const HEADINGS: Readonly<Record<SectionName, string>> = {
  missing: "Needed, and without a partner",
  questions: "Questions",
  joins: "Joins",
  caps: "Spares, to be capped",
  rest: "The rest",
};

/** So many rows of a section are drawn at once. */
const PAGE = 50;

/** Both charts facing, what joins them between; questions are answered one after another. */
export function ReviewStep(props: {
  readonly desk: ChartsDesk;
  readonly accepting: boolean;
  readonly refusal: string;
  readonly onAccept: () => void;
}) {
  const { desk } = props;
  const review = useStore(desk.store, (state) => state.review);
  if (!review) return null;
  return <ReviewOf {...props} review={review} />;
}

function ReviewOf(props: {
  readonly desk: ChartsDesk;
  readonly review: model.Review;
  readonly accepting: boolean;
  readonly refusal: string;
  readonly onAccept: () => void;
}) {
  const { desk, review } = props;
  const sizes = useEditor((state) => state.history.present.settings.sizes);
  const sides = useStore(desk.store, (state) => state.sides);
  const canUndo = useStore(desk.store, (state) => state.past.length > 0);
  const sections = useMemo(() => sectionsOf(review), [review]);
  const counts = useMemo(() => countOf(sections), [sections]);
  const items = useMemo(() => SECTIONS.flatMap((name) => sections[name]), [sections]);
  const [current, setCurrent] = useState<string | null>(null);
  const [focus, setFocus] = useState({ key: "", count: 0 });
  const [swapping, setSwapping] = useState<string | null>(null);
  const [picking, setPicking] = useState<string | null>(null);
  const [more, setMore] = useState<Partial<Record<SectionName, number>>>({});
  const root = useRef<HTMLDivElement>(null);
  const goTo = (key: string) => {
    const now = desk.store.getState().review;
    const list = now ? sectionsOf(now) : sections;
    for (const name of SECTIONS) {
      const index = list[name].findIndex((item) => item.key === key);
      if (index >= (more[name] ?? PAGE)) setMore({ ...more, [name]: index + PAGE });
    }
    setCurrent(key);
    setFocus(({ count }) => ({ key, count: count + 1 }));
  };
  const button = (name: string) => root.current?.querySelector<HTMLElement>(`[data-do="${name}"]`);
  /** On to the next thing that waits for a person; with nothing left, to the button that makes all of it. */
  const onward = (next: model.Review, after: string | null) => {
    const waiting = leftToDo(sectionsOf(next));
    if (waiting.length === 0) {
      // A question may have left a spare over: it is offered once more before all is made.
      requestAnimationFrame(() => (button("accept-all") ?? button("make"))?.focus());
      return;
    }
    const before = items.findIndex((item) => item.key === after);
    const later = waiting.find((item) => items.findIndex((one) => one.key === item.key) > before);
    goTo((later ?? waiting[0]!).key);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the review opens
  useEffect(() => {
    if (counts.offers + counts.offeredCaps > 0) button("accept-all")?.focus();
    else onward(review, null);
  }, []);

  const change = (
    make: (review: model.Review) => model.Review,
    thenOn: boolean,
    from: string | null,
  ): void => {
    desk.decide(make);
    const next = desk.store.getState().review;
    if (!next) return;
    if (thenOn) onward(next, from);
    else if (from) {
      // The row may be another one now: stay as near to it as can be.
      const list = SECTIONS.flatMap((name) => sectionsOf(next)[name]);
      const index = items.findIndex((item) => item.key === from);
      const stays =
        list.find((item) => item.key === from) ?? list[Math.min(Math.max(0, index), list.length - 1)];
      if (stays) goTo(stays.key);
    }
  };
  const act = (action: ReviewAction, item: Item | null) => {
    const index = item ? items.indexOf(item) : -1;
    switch (action.do) {
      case "move":
        return goTo(items[Math.min(items.length - 1, Math.max(0, index + action.by))]?.key ?? "");
      case "first":
        return goTo(items[0]?.key ?? "");
      case "last":
        return goTo(items[items.length - 1]?.key ?? "");
      case "accept-all":
        return change(acceptCertain, true, null);
      case "next-question":
        return onward(review, current);
      case "undo":
        if (desk.undo() && item) goTo(item.key);
        return;
      case "pick":
        return setPicking(item?.key ?? null);
      case "joint":
        return root.current?.querySelector<HTMLElement>("[data-joint]")?.focus();
      case "swap": {
        if (item?.kind !== "joined") return;
        const other = items.find((one) => one.key === swapping);
        if (!swapping || other?.kind !== "joined") return setSwapping(item.key);
        setSwapping(null);
        if (other.key === item.key) return;
        change((now) => model.swap(now, other.group, item.group), false, null);
        return goTo(joinKey({ left: item.group.left, right: other.group.right }));
      }
      default: {
        if (!item) return;
        const answers = item.kind === "question" || item.kind === "missing" || action.do === "accept";
        const goesOn = answers && item.kind !== "offer" && item.kind !== "offer-cap";
        change((now) => applyAction(now, item, action), goesOn, item.key);
      }
    }
  };
  const press = (event: KeyboardEvent) => {
    if (event.defaultPrevented) return;
    const target = event.target as HTMLElement;
    if (event.key === "Escape" && (picking || swapping)) {
      event.preventDefault();
      event.stopPropagation();
      if (picking) goTo(picking);
      setPicking(null);
      setSwapping(null);
      return;
    }
    if (target.closest("input, select, textarea, .review-picker")) return;
    // A button keeps its own keys; everything else in a row belongs to the row.
    if (target.closest("button") && (event.key === "Enter" || event.key === " ")) return;
    const key = target.closest("[data-item]")?.getAttribute("data-item");
    const item = items.find((one) => one.key === key) ?? null;
    const action = actionOf(event, item);
    if (!action) return;
    event.preventDefault();
    act(action, item);
  };
  const at =
    current !== null && items.some((item) => item.key === current) ? current : (items[0]?.key ?? null);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the rows inside take the focus; their keys are heard here
    <div ref={root} className="review" onKeyDown={press}>
      <div className="review-head">
        <div className="review-sides">
          {model.SIDES.map((side) => (
            <p key={side} className={`review-side review-side-${side}`}>
              <b>{sides[side].designation}</b>{" "}
              {sides[side].name || (side === "left" ? "the vehicle" : "the new unit")}
              <small>{review.charts[side].leads.length} leads</small>
            </p>
          ))}
        </div>
        <div className="review-tools">
          {counts.offers + counts.offeredCaps > 0 && (
            <button
              type="button"
              className="button strong-button"
              data-do="accept-all"
              onClick={() => act({ do: "accept-all" }, null)}
            >
              {sayCertain(counts)} <kbd>A</kbd>
            </button>
          )}
          {counts.questions + counts.missing > 0 && (
            <button type="button" className="button" onClick={() => act({ do: "next-question" }, null)}>
              Next question <kbd>N</kbd>
            </button>
          )}
          <label>
            Joints{" "}
            <select
              value={review.joint}
              onChange={(event) => desk.decide((now) => model.setAllJoints(now, event.target.value))}
            >
              {JOINT_KINDS.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <button type="button" className="button" aria-disabled={!canUndo} onClick={() => desk.undo()}>
            Undo <kbd>Ctrl+Z</kbd>
          </button>
        </div>
      </div>
      {SECTIONS.map((name) =>
        sections[name].length === 0 ? null : (
          <section
            key={name}
            className={`review-section review-section-${name}`}
            aria-labelledby={`review-${name}`}
          >
            <h3 id={`review-${name}`}>
              {HEADINGS[name]} <span>{sections[name].length}</span>
            </h3>
            <ol>
              {sections[name].slice(0, more[name] ?? PAGE).map((item) => (
                <ReviewItem
                  key={item.key}
                  item={item}
                  review={review}
                  sizes={sizes}
                  isCurrent={item.key === at}
                  focus={focus.key === item.key ? focus.count : 0}
                  swapping={swapping === null ? null : swapping === item.key ? "this" : "other"}
                  picker={
                    picking === item.key && "ref" in item ? (
                      <PartnerPicker
                        review={review}
                        lead={item.ref}
                        onPick={(partner) => {
                          setPicking(null);
                          change((now) => model.join(now, item.ref, partner), true, item.key);
                        }}
                      />
                    ) : null
                  }
                  onCurrent={() => setCurrent(item.key)}
                  onAction={(action) => act(action, item)}
                  onJoint={(joint) => {
                    if (item.kind === "joined")
                      change((now) => model.setJoint(now, item.group, joint), false, null);
                  }}
                />
              ))}
            </ol>
            {sections[name].length > (more[name] ?? PAGE) && (
              <button
                type="button"
                className="button"
                onClick={() => setMore({ ...more, [name]: (more[name] ?? PAGE) + PAGE })}
              >
                Show more of {sections[name].length}
              </button>
            )}
          </section>
        ),
      )}
      <div className="charts-foot">
        <button
          type="button"
          className="button strong-button"
          data-do="make"
          aria-disabled={props.accepting}
          onClick={props.onAccept}
        >
          {props.accepting ? "Arranging…" : sayMake(counts)}
        </button>
        <button type="button" className="button" onClick={desk.toCharts}>
          Back to the charts
        </button>
        <span className="review-left" role="status">
          {swapping ? "Go to the joint to swap with and press S." : ""}
        </span>
        <span className="review-open">{sayOpen(counts)}</span>
        <kbd>Ctrl+Enter</kbd>
      </div>
      <p className="field-why" role="alert">
        {props.refusal}
      </p>
    </div>
  );
}

function sayOpen(counts: ReturnType<typeof countOf>): string {
  const open = counts.missing + counts.questions + counts.open + counts.offers + counts.offeredCaps;
  if (open === 0) return "Everything is decided.";
  return open === 1 ? "One thing is undecided." : `${open} things are undecided.`;
}
