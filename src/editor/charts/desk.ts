import { createStore } from "zustand/vanilla";
import type { Ready } from "../../catalogue/ready.ts";
import type { Harness, PartId } from "../../graph/harness.ts";
import { Names } from "../../graph/make.ts";
import { readyChart } from "../../match/from-pinout.ts";
import { cautious } from "../../match/propose/cautious.ts";
import { USUAL_JOINT } from "../../match/review/joints.ts";
import {
  EMPTY_CHART,
  type MendedChart,
  type Mends,
  NO_MENDS,
  renames,
  setAside,
} from "../../match/review/mend.ts";
import {
  carryOver,
  otherSide,
  type Review,
  SIDES,
  type SideName,
  startReview,
  withCharts,
} from "../../match/review/review.ts";
import type { Editor } from "../state/store.ts";
import { connectorOf, decidedIn, readConnector, refreshed } from "./desk-harness.ts";
import {
  type ChartSide,
  chartOf,
  clearedSide,
  type Desk,
  emptyDesk,
  JOB_SIDE,
  needsOf,
  type Source,
  withLine,
} from "./desk-model.ts";
import type { Engine } from "./engine.ts";
import type { ReadAnswer } from "./messages.ts";

export type DeskState = Desk & {
  /** A text is being read for this side. */
  readonly reading: Readonly<Record<SideName, boolean>>;
  readonly failed: Readonly<Record<SideName, string>>;
  /** A proposal is under way; with `goOn` the review opens as soon as it is there. */
  readonly proposing: boolean;
  readonly goOn: boolean;
  /** Earlier states of the review, for undo within it. */
  readonly past: readonly Review[];
  /** Counts up whenever the focus is to go to what is needed next; gently: only where it rests on nothing now. */
  readonly focusNext: { readonly count: number; readonly gently: boolean };
  /** A person has done something here that is worth keeping. */
  readonly touched: boolean;
};

export type ChartsDesk = ReturnType<typeof createDesk>;

/** A pause in typing after which the text is read. */
const READ_AFTER_MS = 150;
const MOST_UNDO = 200;

/**
 * The state of the screen, and everything that takes time: reading, proposing. The newest always wins; an
 * answer that was overtaken is dropped.
 */
export function createDesk(editor: Editor, engine: Engine) {
  const present = (): Harness => editor.getState().history.present;
  const store = createStore<DeskState>()(() => ({
    ...emptyDesk(present()),
    reading: { left: false, right: false },
    failed: { left: "", right: "" },
    proposing: false,
    goOn: false,
    past: [],
    focusNext: { count: 0, gently: false },
    touched: false,
  }));
  const latest = { left: 0, right: 0, proposal: 0 };
  const timers: Record<SideName, ReturnType<typeof setTimeout> | null> = { left: null, right: null };
  let proposed: Readonly<Record<SideName, MendedChart>> | null = null;
  let earlier: Review | null = null;
  const touch = () => store.setState({ touched: true });

  const put = (side: SideName, changes: Partial<ChartSide>) =>
    store.setState(({ sides }) => ({ sides: { ...sides, [side]: { ...sides[side], ...changes } } }));
  const sideOf = (side: SideName) => store.getState().sides[side];
  const focusNext = (gently = false) =>
    store.setState(({ focusNext: { count } }) => ({ focusNext: { count: count + 1, gently } }));
  const flag = (key: "reading" | "failed", side: SideName, value: boolean | string) =>
    store.setState((state) => ({ [key]: { ...state[key], [side]: value } }) as Partial<DeskState>);

  /** Another chart stands on this side: what was decided of the one before does not hold for it. */
  function takeChart(side: SideName, changes: Partial<ChartSide>): void {
    put(side, changes);
    proposed = null;
    store.setState({ review: null, past: [] });
    void propose();
  }

  async function read(
    side: SideName,
    ask: () => Promise<ReadAnswer>,
    changes: Partial<ChartSide>,
    settled: boolean,
  ): Promise<void> {
    const job = ++latest[side];
    flag("reading", side, true);
    flag("failed", side, "");
    try {
      const answer = await ask();
      if (job === latest[side]) took(side, answer, changes, settled);
    } catch (error) {
      if (job === latest[side]) {
        flag("failed", side, error instanceof Error ? error.message : String(error));
        put(side, { showText: true });
      }
    } finally {
      if (job === latest[side]) flag("reading", side, false);
    }
  }

  /** What was read goes where it belongs: a text that holds two charts fills both sides. */
  function took(
    side: SideName,
    { read, text }: ReadAnswer,
    changes: Partial<ChartSide>,
    settled: boolean,
  ): void {
    const other = otherSide(side);
    const beside = sideOf(other).source.kind === "beside";
    const fillsBoth = read.charts.length > 1 && (beside || sideOf(other).source.kind === "none");
    const which = fillsBoth
      ? side === "left"
        ? 0
        : 1
      : Math.min(sideOf(side).which, Math.max(0, read.charts.length - 1));
    const found = read.charts[which] ?? EMPTY_CHART;
    const foundRows = found.leads.length > 0;
    put(side, {
      ...changes,
      ...(text === null ? {} : { text }),
      which,
      read: read.charts,
      remarks: read.remarks,
      ...(settled ? { showText: !foundRows } : {}),
    });
    if (fillsBoth) {
      put(other, { source: { kind: "beside" }, read: read.charts, which: 1 - which, showText: false });
    }
    if (settled) {
      proposed = null;
      store.setState({ review: null, past: [] });
    }
    void propose();
    // Where nothing could be read the text comes back, and the focus with it.
    if (settled) focusNext(foundRows);
  }

  /** Proposes joins for the charts as they stand; decisions that were made stay. */
  async function propose(): Promise<void> {
    const { sides } = store.getState();
    const charts = { left: chartOf(sides.left), right: chartOf(sides.right) };
    const job = ++latest.proposal;
    if (charts.left.chart.leads.length === 0 || charts.right.chart.leads.length === 0) {
      store.setState({ proposing: false, goOn: false });
      return;
    }
    store.setState({ proposing: true });
    try {
      const proposal = cautious(await engine.propose(charts.left.chart, charts.right.chart));
      if (job !== latest.proposal) return;
      const { review } = store.getState();
      const plain = { left: charts.left.chart, right: charts.right.chart };
      const next =
        review && proposed
          ? withCharts(review, plain, proposal, {
              left: renames(proposed.left, charts.left),
              right: renames(proposed.right, charts.right),
            })
          : carried(startReview(plain, proposal, USUAL_JOINT, decidedIn(present(), sides, plain)));
      proposed = charts;
      store.setState(({ goOn, step }) => ({
        review: next,
        proposing: false,
        goOn: false,
        step: goOn ? "review" : step,
      }));
    } catch (error) {
      if (job !== latest.proposal) return;
      store.setState({ proposing: false, goOn: false });
      editor.getState().say(`No joins could be proposed: ${(error as Error).message}`, "refused");
    }
  }

  /** A line of a workbook has no text around it: it is read by itself, and comes after the other rows. */
  async function mendAlone(side: SideName, line: number, replacement: string): Promise<void> {
    const was = chartOf(sideOf(side)).chart.unread.find((one) => one.line === line);
    const { read } = await engine.readText(replacement, present().settings.sizes);
    const rows = read.charts[0]?.leads ?? [];
    flag("failed", side, rows.length > 0 ? "" : `"${replacement}" cannot be read either.`);
    if (rows.length === 0 || !was) return;
    const { mends } = sideOf(side);
    setMends(side, { ...setAside(mends, "", was.text), added: [...mends.added, ...rows] });
  }

  /** With what was decided before the screen was closed. */
  function carried(fresh: Review): Review {
    const old = earlier;
    earlier = null;
    return old ? carryOver(fresh, old) : fresh;
  }

  function setMends(side: SideName, mends: Mends): void {
    touch();
    put(side, { mends });
    void propose();
  }

  return {
    store,
    /** A text that was typed is read after a pause; one that was pasted or dropped at once. */
    setText(side: SideName, text: string, settled: boolean, fileName: string | null = null): void {
      touch();
      const { sizes } = present().settings;
      const source: Source = { kind: "text", fileName };
      const before = timers[side];
      if (before) clearTimeout(before);
      const fresh = settled ? { source, mends: NO_MENDS, which: 0 } : { source };
      put(side, { text, ...fresh, ...(settled ? { showText: false } : {}) });
      const start = () => void read(side, () => engine.readText(text, sizes), fresh, settled);
      if (settled) {
        start();
        // What is pasted next is meant for what is empty next, also while this is still being read.
        focusNext();
      } else timers[side] = setTimeout(start, READ_AFTER_MS);
    },
    async setFile(side: SideName, file: File): Promise<void> {
      touch();
      const { sizes } = present().settings;
      const source: Source = { kind: "text", fileName: file.name };
      const bytes = await file.arrayBuffer();
      await read(side, () => engine.readFile(bytes, sizes), { source, mends: NO_MENDS, which: 0 }, true);
    },
    takeReady(side: SideName, ready: Ready): void {
      touch();
      takeChart(side, {
        source: { kind: "ready", ready },
        read: [readyChart(ready, JOB_SIDE[side])],
        which: 0,
        mends: NO_MENDS,
        remarks: ready.caution ? [ready.caution] : [],
        showText: false,
        name: sideOf(side).name || ready.title,
      });
      focusNext();
    },
    takeConnector(side: SideName, id: PartId): void {
      const part = connectorOf(present(), id);
      if (!part) return;
      takeChart(side, {
        source: { kind: "connector", part: id },
        read: [readConnector(part)],
        which: 0,
        mends: NO_MENDS,
        remarks: [],
        showText: false,
        designation: part.designation,
        name: part.name,
      });
      focusNext();
    },
    /** Rows are typed one by one, without a text. */
    typeRows(side: SideName): void {
      takeChart(side, {
        source: { kind: "rows" },
        read: [EMPTY_CHART],
        which: 0,
        showText: false,
        mends: NO_MENDS,
      });
    },
    clear(side: SideName): void {
      latest[side]++;
      flag("reading", side, false);
      flag("failed", side, "");
      const names = new Names(present());
      let free = names.designation("connector");
      if (free === sideOf(otherSide(side)).designation) free = names.designation("connector");
      takeChart(side, clearedSide(sideOf(side), free));
    },
    otherChart(side: SideName): void {
      const { read, which } = sideOf(side);
      takeChart(side, { which: (which + 1) % Math.max(1, read.length), mends: NO_MENDS });
    },
    /** A line of the text is written anew, and the whole text is read again with it. */
    async mendLine(side: SideName, line: number, replacement: string): Promise<void> {
      const owner = sideOf(side).source.kind === "beside" ? otherSide(side) : side;
      if (sideOf(owner).text === "") return mendAlone(side, line, replacement);
      const text = withLine(sideOf(owner).text, line, replacement);
      put(owner, { text });
      await read(owner, () => engine.readText(text, present().settings.sizes), {}, false);
    },
    setMends,
    set: (
      side: SideName,
      changes: Partial<Pick<ChartSide, "designation" | "name" | "view" | "rows" | "showText">>,
    ) => {
      touch();
      put(side, changes);
    },
    focusNext: () => focusNext(),
    /** Opens the review, or shows what is missing for it. */
    toReview(): void {
      const state = store.getState();
      if (needsOf(state, present()).length > 0) {
        focusNext();
        return;
      }
      if (state.review && !state.proposing) store.setState({ step: "review" });
      else {
        store.setState({ goOn: true });
        if (!state.proposing) void propose();
      }
    },
    toCharts: () => store.setState({ step: "charts" }),
    /** Makes a decision; it can be undone within the review. */
    decide(change: (review: Review) => Review): void {
      const { review, past } = store.getState();
      if (!review) return;
      const next = change(review);
      if (next !== review)
        store.setState({ review: next, touched: true, past: [...past, review].slice(-MOST_UNDO) });
    },
    undo(): boolean {
      const { past, review } = store.getState();
      const last = past[past.length - 1];
      if (!last || !review) return false;
      // The charts may have been mended since: what was decided then is taken back, not what was mended.
      const same = last.charts === review.charts && last.proposal === review.proposal;
      const back = same
        ? last
        : withCharts(last, review.charts, review.proposal, { left: new Map(), right: new Map() });
      store.setState({ review: back, past: past.slice(0, -1) });
      return true;
    },
    /** Takes a kept desk up again. Connectors of the harness are looked at anew: they may have changed since. */
    resume(desk: Desk): void {
      proposed = null;
      earlier = desk.review;
      const sides = {
        left: refreshed(present(), desk.sides.left),
        right: refreshed(present(), desk.sides.right),
      };
      const goOn = desk.step === "review";
      store.setState({ step: "charts", sides, review: null, past: [], touched: true, goOn });
      void propose();
    },
    /** The desk as it is to be kept: a review that is being taken up again stands in it before it stands here. */
    asKept(): Desk {
      const { step, sides, review, goOn } = store.getState();
      return { step: goOn ? "review" : step, sides, review: review ?? earlier };
    },
    startAfresh(): void {
      proposed = null;
      earlier = null;
      store.setState({ ...emptyDesk(present()), past: [], failed: { left: "", right: "" } });
    },
    stop: () => {
      for (const side of SIDES) if (timers[side]) clearTimeout(timers[side]);
      engine.stop();
    },
  };
}
