import { type Alignment, align, type Box, distribute } from "../../graph/edits/align.ts";
import type { Place } from "../../graph/harness.ts";
import { moveEdit } from "../canvas/drag-model.ts";
import { keysGoElsewhere } from "../canvas/elsewhere.ts";
import { changePlaces } from "../canvas/place-model.ts";
import { runArrange } from "../canvas/run-arrange.ts";
import type { Editor } from "../state/store.ts";
import { type Command, register } from "./command.ts";

const parts = (editor: Editor) => editor.getState().selection.parts;
const count = (editor: Editor): number => parts(editor).size;

function boxes(editor: Editor): readonly Box[] {
  const { scene } = editor.getState().derived;
  return [...parts(editor)].flatMap((id): Box[] => {
    const placed = scene.parts.get(id);
    if (!placed) return [];
    return [{ part: id, x: placed.x, y: placed.y, width: placed.shape.width, height: placed.shape.height }];
  });
}

const ALIGNMENTS: readonly (readonly [Alignment, string])[] = [
  ["left", "Align left edges"],
  ["centre", "Align centres, one above the other"],
  ["right", "Align right edges"],
  ["top", "Align top edges"],
  ["middle", "Align middles, side by side"],
  ["bottom", "Align bottom edges"],
];

const NUDGES: readonly (readonly [string, string, number, number])[] = [
  ["left", "ArrowLeft", -8, 0],
  ["right", "ArrowRight", 8, 0],
  ["up", "ArrowUp", 0, -8],
  ["down", "ArrowDown", 0, 8],
];

/** Where things stand: arranging, aligning, turning, pinning, and moving a step by key. */
export function registerArrangeCommands(): void {
  register(
    {
      id: "arrange",
      name: "Arrange the drawing",
      group: "arrange",
      keys: ["a"],
      enabled: (editor) => editor.getState().derived.scene.parts.size > 0,
      run: async (editor) => void (await runArrange(editor, true)),
    },
    placing(
      "turn-part",
      "t",
      (n) => (n === 1 ? "Turn left for right" : `Turn ${n} parts left for right`),
      () => true,
      (place) => ({
        ...place,
        turned: !place.turned,
      }),
    ),
    placing(
      "pin",
      "p",
      (n) => (n === 1 ? "Pin where it stands" : `Pin ${n} parts where they stand`),
      (pinned) => !pinned,
      (place) => ({
        ...place,
        pinned: true,
      }),
    ),
    placing(
      "unpin",
      "p",
      (n) => (n === 1 ? "Unpin: arranging may move it" : `Unpin ${n} parts`),
      (pinned) => pinned,
      (place) => ({
        ...place,
        pinned: false,
      }),
    ),
    ...ALIGNMENTS.map(
      ([to, name]): Command => ({
        id: `align-${to}`,
        name,
        group: "arrange",
        keys: [],
        enabled: (editor) => count(editor) >= 2,
        run: (editor) => put(editor, align(editor.getState().history.present, boxes(editor), to)),
      }),
    ),
    ...(["horizontally", "vertically"] as const).map(
      (way): Command => ({
        id: way === "horizontally" ? "distribute-across" : "distribute-down",
        name:
          way === "horizontally" ? "Space out evenly, side by side" : "Space out evenly, one above the other",
        group: "arrange",
        keys: [],
        enabled: (editor) => count(editor) >= 3,
        run: (editor) => put(editor, distribute(editor.getState().history.present, boxes(editor), way)),
      }),
    ),
    ...NUDGES.map(
      ([way, key, dx, dy]): Command => ({
        id: `nudge-${way}`,
        name: `Move a step ${way}`,
        group: "arrange",
        keys: [`Mod+${key}`],
        enabled: (editor) => count(editor) > 0 && !keysGoElsewhere(),
        run: (editor) => {
          const { history, derived, dispatch, selection } = editor.getState();
          // Steps in a row are one: undo takes the parts back to where they were before the first.
          const together = `nudge ${[...selection.parts].join(" ")}`;
          dispatch(moveEdit(history.present, derived.scene, selection.parts, dx, dy), together);
        },
      }),
    ),
  );
}

function put(editor: Editor, change: Parameters<ReturnType<Editor["getState"]>["dispatch"]>[0]): void {
  editor.getState().dispatch(change);
  editor.getState().closeStep();
}

function placing(
  id: string,
  key: string,
  name: (count: number) => string,
  meant: (pinned: boolean) => boolean,
  change: (place: Place) => Place,
): Command {
  const which = (editor: Editor) => {
    const { scene } = editor.getState().derived;
    return [...parts(editor)].filter((part) => meant(scene.parts.get(part)?.pinned ?? false));
  };
  return {
    id,
    name: (editor) => name(which(editor).length || 1),
    group: "arrange",
    keys: [key],
    enabled: (editor) => which(editor).length > 0,
    run: (editor) => {
      const chosen = which(editor);
      const words = name(chosen.length);
      const step = words.charAt(0).toLowerCase() + words.slice(1);
      put(editor, changePlaces(editor.getState().derived.scene, chosen, step, change));
    },
  };
}
