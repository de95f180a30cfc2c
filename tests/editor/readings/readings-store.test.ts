import { describe, expect, test, vi } from "vitest";
import {
  createReadings,
  MOST_WIRES_AT_ONCE,
  type Question,
  type Reckoner,
} from "../../../src/editor/readings/readings-store.ts";
import { createReckoner } from "../../../src/editor/readings/reckoner.ts";
import { createEditor, type Editor } from "../../../src/editor/state/store.ts";
import type { Readings } from "../../../src/electrical/operate/readings.ts";
import { contactKey } from "../../../src/graph/contacts.ts";
import type { Harness, WireId } from "../../../src/graph/harness.ts";
import { idOf, sample, wireNamed } from "./a-sample.ts";

const lamps = sample("work-lamp-relay");

/** A real reckoner that tells how often it was asked. */
function counting(): { readonly reckoner: Reckoner; readonly now: ReturnType<typeof vi.fn> } {
  const real = createReckoner(() => {
    throw new Error("a small harness needs no worker");
  });
  const now = vi.fn(real.now);
  return { reckoner: { ...real, now }, now };
}

async function turnedOn(editor: Editor, reckoner: Reckoner) {
  const store = createReadings(editor, async () => reckoner);
  store.getState().turn(true);
  await vi.waitFor(() => expect(store.getState().busy).toBe(false));
  return store;
}

const voltsAt = (readings: Readings | null, harness: Harness, name: string, contact: number) =>
  readings?.contacts.get(contactKey(idOf(harness, name), contact));

describe("readings beside an editor", () => {
  test("off, nothing is fetched and no edit is listened to", () => {
    const editor = createEditor(lamps);
    const listen = vi.spyOn(editor, "subscribe");
    const fetch = vi.fn(async () => counting().reckoner);
    const store = createReadings(editor, fetch);
    editor.getState().take("moved", { ...lamps });
    store.getState().setKey("crank");
    expect(fetch).not.toHaveBeenCalled();
    expect(listen).not.toHaveBeenCalled();
    expect(store.getState().readings).toBeNull();
  });

  test("on, a switch closed by hand lights the lamps", async () => {
    const editor = createEditor(lamps);
    const store = await turnedOn(editor, counting().reckoner);
    expect(voltsAt(store.getState().readings, lamps, "E1", 1)).toBeCloseTo(0, 2);
    store.getState().toggleSwitch(idOf(lamps, "S1"));
    expect(voltsAt(store.getState().readings, lamps, "E1", 1)).toBeGreaterThan(11);
    store.getState().toggleSwitch(idOf(lamps, "S1"));
    expect(voltsAt(store.getState().readings, lamps, "E1", 1)).toBeCloseTo(0, 2);
  });

  test("what-if volts go before the harness's own", async () => {
    const store = await turnedOn(createEditor(lamps), counting().reckoner);
    store.getState().setWhatIf({ supply_V: 10 });
    expect(voltsAt(store.getState().readings, lamps, "G1", 1)).toBeCloseTo(10, 1);
    store.getState().setWhatIf({ supply_V: Number.NaN });
    expect(store.getState().readings).toBeNull();
    expect(store.getState().problem).toMatch(/battery_V/);
    store.getState().setWhatIf({ supply_V: null });
    expect(store.getState().problem).toBeNull();
    expect(voltsAt(store.getState().readings, lamps, "G1", 1)).toBeCloseTo(12.6, 1);
  });

  test("an edit and its undo are followed; a part moved about changes nothing", async () => {
    const editor = createEditor(lamps);
    const { reckoner, now } = counting();
    const store = await turnedOn(editor, reckoner);
    store.getState().toggleSwitch(idOf(lamps, "S1"));
    const lit = voltsAt(store.getState().readings, lamps, "E1", 1);
    const feed = wireNamed(lamps, "W1").id;
    const { [feed]: _, ...wires } = editor.getState().history.present.wires;
    editor.getState().take("cut W1", { ...editor.getState().history.present, wires });
    expect(voltsAt(store.getState().readings, lamps, "E1", 1)).not.toBe(lit);
    editor.getState().undo();
    expect(voltsAt(store.getState().readings, lamps, "E1", 1)).toBeCloseTo(lit as number, 9);
    const asked = now.mock.calls.length;
    const { present } = editor.getState().history;
    const id = idOf(lamps, "E1");
    const places = { ...present.layout.places, [id]: { ...present.layout.places[id]!, x: 4000 } };
    editor.getState().take("moved E1", { ...present, layout: { ...present.layout, places } });
    expect(now.mock.calls.length).toBe(asked);
    store.getState().show("drop");
    expect(now.mock.calls.length).toBe(asked);
  });

  test("another document begins with the key at run and no switch closed", async () => {
    const editor = createEditor(lamps);
    const store = await turnedOn(editor, counting().reckoner);
    store.getState().toggleSwitch(idOf(lamps, "S1"));
    store.getState().setKey("off");
    const other = sample("reversing-camera");
    editor.getState().open(other);
    expect(store.getState().state).toEqual({ key: "run", conditions: [], closed: [] });
    expect(store.getState().readings?.wires.size).toBe(Object.keys(other.wires).length);
  });

  test("turned off, edits are no longer followed", async () => {
    const editor = createEditor(lamps);
    const { reckoner, now } = counting();
    const store = await turnedOn(editor, reckoner);
    store.getState().turn(false);
    const asked = now.mock.calls.length;
    editor.getState().take("no wires", { ...lamps, wires: {} });
    expect(now.mock.calls.length).toBe(asked);
    expect(store.getState().readings).toBeNull();
  });

  test("a large harness is asked of the worker, and only the newest answer is shown", async () => {
    const wires = Object.fromEntries(
      Array.from({ length: MOST_WIRES_AT_ONCE + 1 }, (_, index) => {
        const id = `w:big${index}` as WireId;
        return [id, { ...wireNamed(lamps, "W1"), id }];
      }),
    );
    const editor = createEditor({ ...lamps, parts: {}, wires: {} });
    const waiting: { question: Question; answer: (readings: Readings | null, why: string | null) => void }[] =
      [];
    const { reckoner, now } = counting();
    const later: Reckoner["later"] = (question, answer) => waiting.push({ question, answer });
    const store = await turnedOn(editor, { ...reckoner, later });
    const asked = now.mock.calls.length;
    editor.getState().take("many wires", { ...lamps, wires });
    expect(store.getState().busy).toBe(true);
    store.getState().setKey("off");
    expect(now.mock.calls.length).toBe(asked);
    expect(waiting.map(({ question }) => question.state.key)).toEqual(["run", "off"]);
    const [old, newest] = waiting.map(({ question }) => ({ state: question.state }) as Readings);
    waiting[0]!.answer(old!, null);
    expect(store.getState().busy).toBe(true);
    waiting[1]!.answer(newest!, null);
    expect(store.getState().busy).toBe(false);
    expect(store.getState().readings?.state.key).toBe("off");
  });
});
