import { type ClipboardEvent, type KeyboardEvent, useEffect, useRef, useState } from "react";
import { useStore } from "zustand";
import { countOf, sectionsOf } from "../../match/review/items.ts";
import { SIDES } from "../../match/review/review.ts";
import { warmArranger } from "../canvas/run-arrange.ts";
import { useFiles } from "../files/use-files.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog } from "../shell/dialogs.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { acceptReview } from "./accept.ts";
import { FunctionList } from "./chart-rows.tsx";
import { ChartSideField } from "./chart-side.tsx";
import { type ChartsDesk, createDesk } from "./desk.ts";
import { isEmpty } from "./desk-harness.ts";
import { connectorsFor, type Desk, endsOf, isBare, type Need, needsOf } from "./desk-model.ts";
import { dropDraft, keepDraft, takeDraft } from "./drafts.ts";
import { createEngine } from "./engine.ts";
import { ReviewStep } from "./review-step.tsx";
import { pastedText } from "./text-field.tsx";
import "./charts.css";

/** After a change the review is kept within this time. */
const KEEP_AFTER_MS = 400;

/** Two charts facing each other: taken in, then joined under a person's eyes. */
export default function ChartsScreen() {
  const editor = useEditorStore();
  const files = useFiles();
  const harness = useEditor((state) => state.history.present);
  const [desk] = useState(() => createDesk(editor, createEngine()));
  const { step, focusNext, proposing, goOn } = useStore(desk.store);
  const [resumed, setResumed] = useState<number | null>(null);
  const [setBy, setSetBy] = useState<Desk | null>(null);
  const [showNeeds, setShowNeeds] = useState(false);
  const [accepting, setAccepting] = useState(false);
  const [refusal, setRefusal] = useState("");
  const root = useRef<HTMLDivElement>(null);
  const keeper = useKeeping(desk, files.store.getState().id, () =>
    isEmpty(editor.getState().history.present),
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the screen opens
  useEffect(() => {
    let isHere = true;
    warmArranger();
    void keeper.take().then((draft) => {
      if (!isHere || !isBare(desk.store.getState())) return;
      if (draft) {
        desk.resume(draft.desk);
        setResumed(draft.keptAt);
      } else openOnConnectors(desk, editor);
    });
    return () => {
      isHere = false;
      keeper.now();
      desk.stop();
    };
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: only when it is asked for
  useEffect(() => {
    if (focusNext.count === 0) return;
    const state = desk.store.getState();
    const needs = needsOf(state, editor.getState().history.present);
    const need = needs.find(({ side, what }) => what !== "chart" || !state.reading[side]);
    const place = need ? `${need.side}-${need.what}` : "go";
    if (focusNext.gently && !restsOnNothing(needs)) return;
    root.current?.querySelector<HTMLElement>(`[data-need="${place}"]`)?.focus();
  }, [focusNext]);

  const toReview = () => {
    setShowNeeds(true);
    desk.toReview();
  };
  const accept = async () => {
    const state = desk.store.getState();
    const ends = endsOf(state, editor.getState().history.present);
    if (!state.review || !ends || accepting) return;
    setAccepting(true);
    setRefusal("");
    const counts = countOf(sectionsOf(state.review));
    const result = await acceptReview(editor, state.review, ends);
    setAccepting(false);
    if (!result.ok) {
      setRefusal(result.why);
      return;
    }
    await keeper.forget();
    closeDialog();
    const { findings } = editor.getState().derived;
    editor.getState().say(sayMade(counts.joined, counts.capped, findings.length));
  };
  const paste = (event: ClipboardEvent) => {
    const target = event.target as HTMLElement;
    if (step !== "charts" || target.closest("input, textarea")) return;
    const text = pastedText(event.clipboardData);
    const { sides } = desk.store.getState();
    const free = SIDES.find((name) => sides[name].source.kind === "none");
    if (text === "" || !free) return;
    event.preventDefault();
    desk.setText(free, text, true);
  };
  const press = (event: KeyboardEvent) => {
    if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    if (step === "charts") toReview();
    else void accept();
  };
  return (
    <Dialog heading="Join two charts" onClose={closeDialog} wide>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: what is pasted beside a field is meant for the next one */}
      <div ref={root} className="charts" onPaste={paste} onKeyDown={press}>
        {resumed !== null && step === "charts" && (
          <p className="charts-resumed">
            {setBy
              ? "What was begun before is set aside."
              : `Taken up where it was left, ${sayWhen(resumed)}.`}{" "}
            <button
              type="button"
              className="text-button"
              onClick={() => {
                const now = desk.asKept();
                if (setBy) desk.resume(setBy);
                else desk.startAfresh();
                setSetBy(setBy ? null : now);
              }}
            >
              {setBy ? "Bring it back" : "Start afresh"}
            </button>
          </p>
        )}
        {step === "charts" ? (
          <>
            <FunctionList />
            <div className="charts-facing">
              {SIDES.map((name) => (
                <ChartSideField key={name} name={name} desk={desk} harness={harness} showNeeds={showNeeds} />
              ))}
            </div>
            <div className="charts-foot">
              <button type="button" className="button strong-button" data-need="go" onClick={toReview}>
                Review the joins
              </button>
              <span role="status">{goOn && proposing ? "Working out who joins whom…" : ""}</span>
              <kbd>Ctrl+Enter</kbd>
            </div>
          </>
        ) : (
          <ReviewStep desk={desk} accepting={accepting} refusal={refusal} onAccept={() => void accept()} />
        )}
      </div>
    </Dialog>
  );
}

/** The focus is nowhere, or on something that was asked for and is answered by now. */
function restsOnNothing(needs: readonly Need[]): boolean {
  const active = document.activeElement;
  if (!active || active === document.body || active.tagName === "DIALOG") return true;
  const place = active.getAttribute("data-need");
  return place !== null && place !== "go" && !needs.some(({ side, what }) => `${side}-${what}` === place);
}

/** Starts on connectors that stand in the harness, where it is clear which are meant. */
function openOnConnectors(desk: ChartsDesk, editor: ReturnType<typeof useEditorStore>): void {
  const { history, selection } = editor.getState();
  const found = connectorsFor(history.present, selection.parts);
  for (const side of SIDES) {
    const part = found[side];
    if (part) desk.takeConnector(side, part);
  }
  if (found.left && found.right) desk.toReview();
}

/** Keeps the desk beside the harness: a moment after every change, and when the screen is left. */
function useKeeping(desk: ChartsDesk, id: string, isSheetEmpty: () => boolean) {
  const editor = useEditorStore();
  const [keeping] = useState(() => {
    let timer: ReturnType<typeof setTimeout> | null = null;
    let isDone = false;
    let isTold = false;
    const write = () => {
      if (timer) clearTimeout(timer);
      timer = null;
      const now = desk.asKept();
      if (isDone || isBare(now)) return;
      keepDraft(id, isSheetEmpty(), now).catch((error: Error) => {
        if (isTold) return;
        isTold = true;
        editor.getState().say(`The review is not kept in this browser: ${error.message}`, "refused");
      });
    };
    return {
      later: () => {
        if (timer) clearTimeout(timer);
        timer = setTimeout(write, KEEP_AFTER_MS);
      },
      now: () => {
        if (timer) write();
      },
      take: () => takeDraft(id, isSheetEmpty()).catch(() => null),
      forget: async () => {
        isDone = true;
        if (timer) clearTimeout(timer);
        await dropDraft(id).catch(() => undefined);
      },
    };
  });
  useEffect(
    () =>
      desk.store.subscribe((state, before) => {
        if (!state.touched) return;
        if (state.sides !== before.sides || state.review !== before.review || state.step !== before.step)
          keeping.later();
      }),
    [desk, keeping],
  );
  return keeping;
}

function sayWhen(at: number): string {
  const when = new Date(at);
  const sameDay = when.toDateString() === new Date().toDateString();
  const time = when.toLocaleTimeString(undefined, { hour: "2-digit", minute: "2-digit" });
  return sameDay ? `today at ${time}` : `${when.toLocaleDateString()} at ${time}`;
}

function sayMade(joints: number, caps: number, findings: number): string {
  const of = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;
  const made = [joints > 0 ? of(joints, "joint") : "", caps > 0 ? of(caps, "cap") : ""]
    .filter(Boolean)
    .join(" and ");
  return `${made || "Two connectors"} made. ${findings === 0 ? "Nothing is found wrong." : `${of(findings, "finding")}.`}`;
}
