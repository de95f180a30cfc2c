import type { PartId, WireId } from "../../graph/harness.ts";
import type { Editor } from "../state/store.ts";
import { type CanvasStore, NOTHING_TAKEN } from "./canvas-store.ts";
import { draggedScene, type Guide, moveEdit, snapShift, wiresTaken } from "./drag-model.ts";

/** Where routing takes longer than this of a frame's 16 ms, wires follow simply and are routed when the hand rests. */
const FRAME_SHARE_MS = 6;
const REST_MS = 90;

/** A drag of parts: shown on a draft while it lasts, one step when it ends. */
export class PartDrag {
  private wanted = { dx: 0, dy: 0, free: false };
  private shown = { dx: 0, dy: 0 };
  private frame = 0;
  private rest = 0;
  /** What routing the wires of this drag took last. */
  private cost_ms = 0;
  private readonly taken: ReadonlySet<WireId>;

  constructor(
    private readonly editor: Editor,
    private readonly canvas: CanvasStore,
    private readonly held: PartId,
    private readonly moving: ReadonlySet<PartId>,
  ) {
    this.taken = wiresTaken(editor.getState().derived.scene, moving);
  }

  to(dx: number, dy: number, free: boolean): void {
    this.wanted = { dx, dy, free };
    if (!this.frame) this.frame = requestAnimationFrame(() => this.show());
  }

  private show(): void {
    this.frame = 0;
    const { derived } = this.editor.getState();
    const { dx, dy, free } = this.wanted;
    const shift = snapShift(derived.scene, this.moving, this.held, dx, dy, free);
    if (shift.dx === this.shown.dx && shift.dy === this.shown.dy) return;
    this.shown = { dx: shift.dx, dy: shift.dy };
    this.draw(this.cost_ms > FRAME_SHARE_MS, shift.guides);
    clearTimeout(this.rest);
    if (this.cost_ms > FRAME_SHARE_MS) {
      this.rest = window.setTimeout(() => this.draw(false, shift.guides), REST_MS);
    }
  }

  private draw(quick: boolean, guides: readonly Guide[]): void {
    const { history, derived } = this.editor.getState();
    const { dx, dy } = this.shown;
    const began = performance.now();
    const { sizes } = history.present.settings;
    const draft = draggedScene(derived.scene, sizes, this.moving, this.taken, dx, dy, quick);
    if (!quick) this.cost_ms = performance.now() - began;
    this.canvas.setState({ draft, taken: this.taken, guides });
  }

  drop(): void {
    clearTimeout(this.rest);
    if (this.frame) {
      cancelAnimationFrame(this.frame);
      this.show();
    }
    const { dx, dy } = this.shown;
    const { history, derived, dispatch, closeStep } = this.editor.getState();
    if (dx !== 0 || dy !== 0) {
      dispatch(moveEdit(history.present, derived.scene, this.moving, dx, dy));
      closeStep();
    }
    this.canvas.setState({ draft: null, taken: NOTHING_TAKEN, guides: [] });
  }

  cancel(): void {
    clearTimeout(this.rest);
    if (this.frame) cancelAnimationFrame(this.frame);
    this.frame = 0;
    this.canvas.setState({ draft: null, taken: NOTHING_TAKEN, guides: [] });
  }
}
