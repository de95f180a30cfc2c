import { nameContact } from "../../catalogue/describe.ts";
import type { ContactRef } from "../../graph/harness.ts";
import { readingsOf } from "../readings/readings-store.ts";
import { sayReadingAt, sayWireReading } from "../readings/say-readings.ts";
import { dialogPending } from "../shell/dialogs.ts";
import type { Editor } from "../state/store.ts";
import { canvasOf } from "./canvas-store.ts";
import { type Field, fieldsOfPart, fieldsOfWire } from "./fields-model.ts";
import type { Hand } from "./hand.ts";
import { type Cursor, cursorOf, moveByKey, selectionOf } from "./keyboard-model.ts";
import { boxOfAbout } from "./marks-model.ts";
import { sayContact, sayPart, sayWire } from "./say-model.ts";
import type { Sight } from "./sight.ts";

/**
 * The keyboard on the drawing. Arrows go from part to part; Enter goes in to the contacts; from a contact a wire
 * leads on; J draws a lead from where one stands. Escape goes one level up.
 * @returns whether the key was taken
 */
export function pressKey(editor: Editor, hand: Hand, sight: Sight, event: KeyboardEvent): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey || dialogPending()) return false;
  const canvas = canvasOf(editor);
  const { selection, derived, history } = editor.getState();
  const cursor = cursorOf(selection);
  const joining = canvas.getState().rubber !== null;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  if ((key === "F10" && event.shiftKey) || key === "ContextMenu") {
    openMenuAt(editor, hand, sight, cursor);
    return true;
  }
  if (event.shiftKey) return false;
  if (key === "Escape" && hand.cancel()) return true;
  if (key === "F2") return editAt(editor, cursor);
  if (key === "j") return startLead(editor, hand, cursor);
  if (key === "Enter" && cursor.level === "contact") {
    const { rubber } = canvas.getState();
    if (!rubber) return editAt(editor, cursor);
    canvas.setState({ rubber: null });
    if (hand.lead.joinTo(rubber.from, { kind: "contact", ref: cursor.ref }, { x: 0, y: 0 })) {
      editor.getState().select(selectionOf(cursor));
      announce(editor, cursor, "Joined. ");
    }
    return true;
  }
  const next = moveByKey(
    { harness: history.present, traced: derived.traced, scene: derived.scene },
    cursor,
    key,
    joining,
  );
  if (!next) {
    if (!/^Arrow|^Home$|^End$/.test(key)) return false;
    canvas.setState({ said: nothingThere(cursor) });
    return true;
  }
  goTo(editor, sight, next);
  const { rubber } = canvas.getState();
  if (rubber && next.level === "contact") followTo(editor, hand, next.ref);
  return true;
}

function nothingThere(cursor: Cursor): string {
  return cursor.level === "wire" ? "This end hangs loose." : "Nothing further that way.";
}

/** The part, contact or wire that the keyboard stands on. */
function aboutOf(cursor: Cursor): Parameters<typeof boxOfAbout>[1] | null {
  switch (cursor.level) {
    case "part":
      return { part: cursor.part };
    case "contact":
      return cursor.ref;
    case "wire":
      return { wire: cursor.wire };
    default:
      return null;
  }
}

/** Stands the keyboard on a part, a contact or a wire, shows it, and says what it is. */
export function goTo(editor: Editor, sight: Sight, cursor: Cursor): void {
  const { derived, select } = editor.getState();
  select(selectionOf(cursor));
  const about = aboutOf(cursor);
  const box = about && boxOfAbout(derived.scene, about);
  if (box && cursor.level !== "wire") sight.reveal(box);
  announce(editor, cursor);
}

function announce(editor: Editor, cursor: Cursor, before = ""): void {
  const { derived, history } = editor.getState();
  const harness = history.present;
  const part = cursor.level === "part" ? harness.parts[cursor.part] : undefined;
  const wire = cursor.level === "wire" ? harness.wires[cursor.wire] : undefined;
  const { readings } = readingsOf(editor).getState();
  const said = part
    ? sayPart(part)
    : wire
      ? sayWire(harness, wire, sayWireReading(harness, wire, readings?.wires.get(wire.id)))
      : cursor.level === "contact"
        ? sayContact(harness, derived.traced, cursor.ref, sayReadingAt(readings, harness, cursor.ref))
        : "Nothing selected";
  canvasOf(editor).setState({ said: before + said });
}

function followTo(editor: Editor, hand: Hand, ref: ContactRef): void {
  const { scene } = editor.getState().derived;
  const placed = scene.parts.get(ref.part);
  const port = placed?.shape.ports.find((one) => one.contact === ref.contact);
  if (!placed || !port) return;
  const spot = { x: placed.x + port.x, y: placed.y + port.y };
  hand.lead.follow(spot, { kind: "contact", ref, ...spot });
}

function startLead(editor: Editor, hand: Hand, cursor: Cursor): boolean {
  const harness = editor.getState().history.present;
  if (cursor.level === "contact") {
    hand.lead.begin({ contact: cursor.ref }, false);
    canvasOf(editor).setState({
      said: `Lead from ${nameContact(harness, cursor.ref)}. Go to another contact and press Enter to join, Escape to stop.`,
    });
    return true;
  }
  if (cursor.level !== "wire") return false;
  const open = harness.wires[cursor.wire]?.ends.indexOf("loose");
  if (open !== 0 && open !== 1) return false;
  hand.lead.begin({ wire: cursor.wire, open }, false);
  const near = harness.wires[cursor.wire]?.ends[1 - open];
  if (near && near !== "loose") editor.getState().select(selectionOf({ level: "contact", ref: near }));
  return true;
}

/** Opens the text of what the keyboard stands on: a part's designation, a cavity's function, a wire's label. */
export function editAt(editor: Editor, cursor: Cursor): boolean {
  const { scene } = editor.getState().derived;
  let field: Field | undefined;
  if (cursor.level === "part" || cursor.level === "contact") {
    const placed = scene.parts.get(cursor.level === "part" ? cursor.part : cursor.ref.part);
    const fields = placed ? fieldsOfPart(placed) : [];
    field =
      cursor.level === "part"
        ? fields[0]
        : (fields.find(
            ({ at }) => "contact" in at && at.contact === cursor.ref.contact && at.what === "function",
          ) ?? fields[0]);
  } else if (cursor.level === "wire") {
    const wire = scene.wires.get(cursor.wire);
    field = wire && fieldsOfWire(wire)[0];
  }
  if (!field) return false;
  canvasOf(editor).setState({ field });
  return true;
}

function openMenuAt(editor: Editor, hand: Hand, sight: Sight, cursor: Cursor): void {
  const { scene } = editor.getState().derived;
  const corner = sight.root?.getBoundingClientRect();
  const about = aboutOf(cursor);
  const box = about && boxOfAbout(scene, about);
  const spot = box ? { x: box.x + box.width / 2, y: box.y + box.height / 2 } : sight.centre();
  const at = sight.toScreen(spot);
  const screen = { x: at.x + (corner?.left ?? 0), y: at.y + (corner?.top ?? 0) };
  hand.cancel();
  canvasOf(editor).setState({ menu: { screen, spot } });
}
