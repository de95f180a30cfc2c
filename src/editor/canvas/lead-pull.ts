import { nameContact } from "../../catalogue/describe.ts";
import { sameEnd } from "../../graph/contacts.ts";
import { nameOfEdit } from "../../graph/edits/edit.ts";
import type { ContactRef, PartKind } from "../../graph/harness.ts";
import type { Editor } from "../state/store.ts";
import type { CanvasStore, Rubber, Spot } from "./canvas-store.ts";
import type { Hit } from "./hit-model.ts";
import { dropEdit, endIn, type Source, sayDrop, type Target } from "./join-model.ts";
import { contactSpot } from "./nodes-model.ts";

/** Drawing a lead by pointer, finger or key: begun at a contact or a loose end, followed, and let go. */
export class LeadPull {
  constructor(
    private readonly editor: Editor,
    private readonly canvas: CanvasStore,
  ) {}

  get rubber(): Rubber | null {
    return this.canvas.getState().rubber;
  }

  begin(from: Source, held: boolean): void {
    const start = this.startOf(from);
    if (!start) return;
    const { history } = this.editor.getState();
    const words =
      "contact" in from
        ? `Lead from ${nameContact(history.present, from.contact)}: choose the contact it goes to, Escape to stop.`
        : "Choose the contact that the loose end goes to, Escape to stop.";
    this.canvas.setState({ rubber: { from, start, end: start, target: null, words, held } });
    this.editor.getState().say(words);
  }

  private startOf(from: Source): Spot | null {
    const { scene } = this.editor.getState().derived;
    if ("contact" in from) return contactSpot(scene, from.contact.part, from.contact.contact);
    return scene.wires.get(from.wire)?.loose ?? null;
  }

  /** Follows a point; what lies there lights up, and the words say what letting go would do. */
  follow(spot: Spot, hit: Hit): void {
    const { rubber } = this;
    if (!rubber) return;
    const target = targetOf(rubber.from, hit);
    const end = hit.kind === "contact" && target ? { x: hit.x, y: hit.y } : spot;
    if (sameTarget(target, rubber.target)) {
      this.canvas.setState({ rubber: { ...rubber, end } });
      return;
    }
    const { history, say } = this.editor.getState();
    const words = sayDrop(history.present, rubber.from, asTarget(target));
    this.canvas.setState({ rubber: { ...rubber, end, target, words } });
    if (target) say(words);
  }

  /** Lets go. On empty ground a lead held down asks what it is to end in; one begun by a click is given up. */
  letGo(spot: Spot, hit: Hit, screen: Spot): void {
    const { rubber } = this;
    if (!rubber) return;
    this.canvas.setState({ rubber: null });
    const target = targetOf(rubber.from, hit);
    if (target) this.joinTo(rubber.from, asTarget(target) as Exclude<Target, { kind: "ground" }>, spot);
    else if (rubber.held && this.isGround(rubber.from, hit)) {
      this.canvas.setState({ choosing: { from: rubber.from, spot, screen } });
    } else if (rubber.held) {
      this.editor.getState().say("No lead was drawn. Let go on a contact, on a wire or on bare paper.");
    }
  }

  /** The room round a small symbol counts as ground: what is put there finds a place beside it. */
  private isGround(from: Source, hit: Hit): boolean {
    if (hit.kind !== "part") return hit.kind === "nothing";
    if ("contact" in from && from.contact.part === hit.part) return false;
    const kind = this.editor.getState().history.present.parts[hit.part]?.kind;
    return kind !== "connector" && kind !== "module";
  }

  joinTo(from: Source, target: Exclude<Target, { kind: "ground" }>, spot: Spot): boolean {
    const { history, derived, dispatch, say, select } = this.editor.getState();
    const change = dropEdit(history.present, from, target, derived.scene, spot);
    if (!dispatch(change)) return false;
    select({});
    if (!("ok" in change)) say(`Done: ${nameOfEdit(change)}.`);
    return true;
  }

  endIn(from: Source, kind: PartKind | "loose", spot: Spot): boolean {
    const { history, derived, dispatch, say } = this.editor.getState();
    const change = endIn(history.present, derived.scene, from, kind, spot);
    this.canvas.setState({ choosing: null, rubber: null });
    if (!dispatch(change)) return false;
    if (!("ok" in change)) say(`Done: ${nameOfEdit(change)}.`);
    return true;
  }

  stop(): void {
    if (!this.rubber) return;
    this.canvas.setState({ rubber: null });
    this.editor.getState().say("No lead was drawn.");
  }
}

/** Whether a source starts at this very contact. */
export function startsAt(from: Source, ref: ContactRef): boolean {
  return "contact" in from && sameEnd(from.contact, ref);
}

function targetOf(from: Source, hit: Hit): Rubber["target"] {
  if (hit.kind === "contact") return startsAt(from, hit.ref) ? null : hit.ref;
  if (hit.kind === "wire" && !("wire" in from && from.wire === hit.wire)) return { wire: hit.wire };
  return null;
}

function asTarget(target: Rubber["target"]): Target {
  if (!target) return { kind: "ground" };
  return "wire" in target ? { kind: "wire", wire: target.wire } : { kind: "contact", ref: target };
}

function sameTarget(a: Rubber["target"], b: Rubber["target"]): boolean {
  if (!a || !b) return a === b;
  if ("wire" in a) return "wire" in b && a.wire === b.wire;
  return !("wire" in b) && sameEnd(a, b);
}
