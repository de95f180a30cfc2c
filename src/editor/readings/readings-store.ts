import { createStore, type StoreApi } from "zustand/vanilla";
import type { Condition, KeyPosition, KeyState } from "../../electrical/operate/key-state.ts";
import type { Readings } from "../../electrical/operate/readings.ts";
import type { Harness, PartId } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import type { Editor } from "../state/store.ts";

/** What is laid over the drawing. */
export type Overlay = "volts" | "amps" | "load" | "drop";

/** What one may ask for besides the harness's own figures; `null`: as the harness has it. */
export type WhatIf = {
  /** At the battery's posts. */
  readonly supply_V: number | null;
  readonly ambient_degC: number | null;
  /** Amplifiers draw what they need to give their full power on every channel. */
  readonly amplifiersAtFull: boolean;
};

export const AS_IT_IS: WhatIf = { supply_V: null, ambient_degC: null, amplifiersAtFull: false };
export const AT_FIRST: KeyState = { key: "run", conditions: [], closed: [] };

export type ReadingsState = {
  readonly on: boolean;
  readonly state: KeyState;
  readonly whatIf: WhatIf;
  readonly overlay: Overlay;
  /**
   * Of the harness, state and what-if that are shown now. While `busy`, those of a moment ago; `null` when off, and until
   * the first are there.
   */
  readonly readings: Readings | null;
  readonly busy: boolean;
  /** Why there are none, in words; `null` where nothing went wrong. */
  readonly problem: string | null;
};

export type ReadingsActions = {
  turn(on: boolean): void;
  setKey(key: KeyPosition): void;
  toggleCondition(condition: Condition): void;
  /** One switch of several, worked by hand. */
  toggleSwitch(part: PartId): void;
  setWhatIf(changes: Partial<WhatIf>): void;
  show(overlay: Overlay): void;
};

export type ReadingsStore = StoreApi<ReadingsState & ReadingsActions>;

/** All that readings are worked out from. */
export type Question = {
  readonly harness: Harness;
  readonly state: KeyState;
  readonly whatIf: WhatIf;
};

/** What works readings out; it is fetched when they are first asked for. */
export type Reckoner = {
  /** At once. @throws RangeError for what-if values that are no numbers */
  now(question: Question, traced: Traced, before: Readings | null): Readings;
  /** In a worker. A newer question takes the place of this one, which then never answers. */
  later(question: Question, answer: (readings: Readings | null, problem: string | null) => void): void;
  /** Nothing is waited for any more. */
  stop(): void;
};

/** Up to so many wires readings are worked out within the frame that asks for them. */
export const MOST_WIRES_AT_ONCE = 500;

const fetchReckoner = async (): Promise<Reckoner> => (await import("./reckoner.ts")).createReckoner();

/**
 * The readings beside one editor. Off, it listens to nothing and holds nothing. On, it follows every edit, undo and
 * change of state; an edit that moves parts about only does not work anything out again.
 * @param fetch tests bring their own reckoner
 */
export function createReadings(
  editor: Editor,
  fetch: () => Promise<Reckoner> = fetchReckoner,
): ReadingsStore {
  let reckoner: Reckoner | null = null;
  let fetching = false;
  let asked: Question | null = null;
  let deaf: (() => void) | null = null;
  let documentKey = editor.getState().documentKey;

  const store = createStore<ReadingsState & ReadingsActions>()((set, get) => {
    const settle = (): void => {
      const { on, state, whatIf } = get();
      if (!on) return;
      if (!reckoner) {
        void fetchIt();
        return;
      }
      const { derived } = editor.getState();
      const question: Question = { harness: derived.harness, state, whatIf };
      if (asked && alike(asked, question)) return;
      asked = question;
      if (Object.keys(question.harness.wires).length > MOST_WIRES_AT_ONCE) {
        set({ busy: true });
        reckoner.later(question, (readings, problem) => {
          if (asked === question && get().on) set({ readings, problem, busy: false });
        });
        return;
      }
      reckoner.stop();
      try {
        const readings = reckoner.now(question, derived.traced, get().readings);
        set({ readings, problem: null, busy: false });
      } catch (error) {
        set({ readings: null, problem: wordsOf(error), busy: false });
      }
    };
    const fetchIt = async (): Promise<void> => {
      set({ busy: true });
      if (fetching) return;
      fetching = true;
      try {
        reckoner = await fetch();
      } catch (error) {
        set({ busy: false, problem: `Readings could not be loaded: ${wordsOf(error)}` });
        return;
      } finally {
        fetching = false;
      }
      settle();
    };
    const change = (changes: Partial<ReadingsState>): void => {
      set(changes);
      settle();
    };
    const follow = (): void => {
      const now = editor.getState();
      if (now.documentKey === documentKey) settle();
      else {
        // Another document: its switches are other ones.
        documentKey = now.documentKey;
        change({ state: AT_FIRST, whatIf: AS_IT_IS, readings: null });
      }
    };
    return {
      on: false,
      state: AT_FIRST,
      whatIf: AS_IT_IS,
      overlay: "volts",
      readings: null,
      busy: false,
      problem: null,
      turn(on) {
        if (on === get().on) return;
        deaf?.();
        deaf = on
          ? editor.subscribe((now, was) => {
              if (now.derived !== was.derived || now.documentKey !== was.documentKey) follow();
            })
          : null;
        asked = null;
        if (!on) reckoner?.stop();
        set({ on, readings: null, busy: false, problem: null });
        if (on) follow();
      },
      setKey: (key) => change({ state: { ...get().state, key } }),
      toggleCondition(condition) {
        const { state } = get();
        change({ state: { ...state, conditions: toggled(state.conditions, condition) } });
      },
      toggleSwitch(part) {
        const { state } = get();
        change({ state: { ...state, closed: toggled(state.closed ?? [], part) } });
      },
      setWhatIf: (changes) => change({ whatIf: { ...get().whatIf, ...changes } }),
      show: (overlay) => set({ overlay }),
    };
  });
  return store;
}

const stores = new WeakMap<Editor, ReadingsStore>();

/** The readings beside an editor; made when first asked for. */
export function readingsOf(editor: Editor): ReadingsStore {
  let store = stores.get(editor);
  if (!store) {
    store = createReadings(editor);
    stores.set(editor, store);
  }
  return store;
}

/** Whether two questions have one answer: where parts stand on the drawing changes no reading. */
function alike(a: Question, b: Question): boolean {
  return (
    a.state === b.state &&
    a.whatIf === b.whatIf &&
    (a.harness === b.harness ||
      (a.harness.parts === b.harness.parts &&
        a.harness.wires === b.harness.wires &&
        a.harness.runs === b.harness.runs &&
        a.harness.settings === b.harness.settings))
  );
}

function toggled<T>(list: readonly T[], item: T): readonly T[] {
  return list.includes(item) ? list.filter((one) => one !== item) : [...list, item];
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
