import { apply } from "../../graph/edits/apply.ts";
import type { Arranger } from "../../layout/arrange/client.ts";
import { arrangementEdit, arrangeProblem } from "../../layout/arrangement.ts";
import type { Editor } from "../state/store.ts";
import { canvasOf } from "./canvas-store.ts";

let arranger: Promise<Arranger> | null = null;

/** The layout engine is large: it is fetched when first needed, or when the page has nothing else to do. */
export function theArranger(): Promise<Arranger> {
  arranger ??= import("../../layout/arrange/client.ts").then(({ createArranger }) => createArranger());
  return arranger;
}

/** Starts the engine ahead of need. */
export function warmArranger(): void {
  void theArranger().then((one) => one.warm());
}

/** Most arrangements are done before anybody could read a note about them. */
const NOTE_AFTER_MS = 300;

/**
 * Arranges the drawing. Pinned parts stay where they are.
 * @param step whether it is a step that can be undone; opening a harness without places is not
 * @returns whether it was arranged; false where it was cancelled, failed, or overtaken by an edit
 */
export async function runArrange(editor: Editor, step: boolean): Promise<boolean> {
  const canvas = canvasOf(editor);
  const started = editor.getState();
  const harness = started.history.present;
  if (Object.keys(harness.parts).length === 0) return false;
  canvas.getState().arranging?.cancel();
  const stop = new AbortController();
  const mine = { since: Date.now(), shown: false, cancel: () => stop.abort() };
  canvas.setState({ arranging: mine });
  const note = setTimeout(() => {
    const { arranging } = canvas.getState();
    if (arranging?.cancel === mine.cancel) canvas.setState({ arranging: { ...mine, shown: true } });
  }, NOTE_AFTER_MS);
  try {
    const engine = await theArranger();
    const arranged = await engine.arrange(arrangeProblem(harness), { signal: stop.signal });
    const now = editor.getState();
    if (now.documentKey !== started.documentKey) return false;
    if (now.history.present !== harness) {
      // Nobody asked for the first arrangement: it takes in what was edited meanwhile.
      if (!step) return await runArrange(editor, false);
      now.say("The harness was edited while it was being arranged. Arrange it again.", "refused");
      return false;
    }
    canvas.view?.glide();
    const change = arrangementEdit(harness, arranged);
    if (step) {
      now.dispatch(change);
      now.closeStep();
    } else {
      const result = apply(harness, change);
      if (result.ok) now.adopt(result.harness);
    }
    canvas.view?.fit(step);
    return true;
  } catch (error) {
    const cancelled = error instanceof DOMException && error.name === "AbortError";
    if (!cancelled || stop.signal.aborted) {
      const why = error instanceof Error ? error.message : String(error);
      editor
        .getState()
        .say(cancelled ? "Arranging was cancelled; nothing moved." : why, cancelled ? "said" : "refused");
    }
    return false;
  } finally {
    clearTimeout(note);
    if (canvas.getState().arranging?.cancel === mine.cancel) canvas.setState({ arranging: null });
  }
}

/** Arranges a harness that has just been opened and whose parts have no places yet. */
export function arrangeIfUnplaced(editor: Editor): void {
  const { parts, layout } = editor.getState().history.present;
  const unplaced = Object.keys(parts).some((id) => !(id in layout.places));
  if (unplaced) void runArrange(editor, false);
}
