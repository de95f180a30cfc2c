import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cssInk } from "../../../src/editor/canvas/ink-css.ts";
import { boxOfAbout, marksOf } from "../../../src/editor/canvas/marks-model.ts";
import { mergeMarks } from "../../../src/editor/canvas/merge-model.ts";
import { nodesOf } from "../../../src/editor/canvas/nodes-model.ts";
import { sayContact, sayPart, sayWire } from "../../../src/editor/canvas/say-model.ts";
import { clicked } from "../../../src/editor/canvas/select-model.ts";
import { circuitMeant, liftedBy } from "../../../src/editor/canvas/trace-model.ts";
import { edgePull, reveal, seenBox, viewOf, zoomedAt } from "../../../src/editor/canvas/view-model.ts";
import { copyFragment, readFragment } from "../../../src/graph/edits/copy.ts";
import { trace } from "../../../src/graph/trace.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { check } from "../../../src/rules/check.ts";
import { adapter, placedHarness } from "./a-harness.ts";

const built = adapter().path("X1.A4", "XJ1", "X2.1");
const harness = placedHarness(built.harness, { X1: [0, 0], XJ1: [480, 44], X2: [900, 0] });
const traced = trace(harness);
const scene = makeScene(harness, traced);
const nothing = { parts: new Set<never>(), wires: new Set<never>(), contact: null };

describe("views", () => {
  const box = fc.record({
    x: fc.integer({ min: -5000, max: 5000 }),
    y: fc.integer({ min: -5000, max: 5000 }),
    width: fc.integer({ min: 1, max: 9000 }),
    height: fc.integer({ min: 1, max: 9000 }),
  });
  const page = { width: 1280, height: 800 };
  test("the whole of a box is seen", () => {
    fc.assert(
      fc.property(box, (wanted) => {
        const seen = seenBox(viewOf(wanted, page), page);
        expect(seen.x).toBeLessThanOrEqual(wanted.x);
        expect(seen.y).toBeLessThanOrEqual(wanted.y);
        expect(seen.x + seen.width).toBeGreaterThanOrEqual(wanted.x + wanted.width);
        expect(seen.y + seen.height).toBeGreaterThanOrEqual(wanted.y + wanted.height);
      }),
      { seed: 7 },
    );
  });
  test("zooming leaves the point under the pointer where it is, to the pixel", () => {
    const view = { x: 40, y: -20, zoom: 0.8 };
    const at = { x: 500, y: 300 };
    const next = zoomedAt(view, 1.5, at);
    const spot = (v: typeof view) => (at.x - v.x) / v.zoom;
    expect(Math.abs(spot(next) - spot(view)) * next.zoom).toBeLessThanOrEqual(1);
    expect(zoomedAt(view, 100, at).zoom).toBe(4);
  });
  test("a drag pulls the drawing only near the edge, inwards, and faster the nearer it is", () => {
    expect(edgePull({ x: 640, y: 400 }, page)).toEqual({ x: 0, y: 0 });
    expect(edgePull({ x: 0, y: 790 }, page)).toEqual({ x: 14, y: -10 });
    expect(edgePull({ x: 2000, y: 400 }, page).x).toBe(-14);
  });
  test("what is in sight already moves nothing", () => {
    const view = { x: 0, y: 0, zoom: 1 };
    expect(reveal(view, page, { x: 100, y: 100, width: 50, height: 20 })).toBe(view);
    expect(reveal(view, page, { x: 1400, y: 100, width: 50, height: 20 })).toMatchObject({ x: -202, y: 0 });
  });
});

test("a part that stands as before is the very same node", () => {
  const before = nodesOf(scene, []);
  expect(nodesOf(makeScene(harness, traced), before)).toBe(before);
  const moved = nodesOf(
    makeScene(placedHarness(built.harness, { X1: [0, 0], XJ1: [480, 44], X2: [900, 80] }), traced),
    before,
  );
  expect(moved.map((node, index) => node === before[index])).toEqual([true, false, true]);
  // And back again, as undo does.
  expect(nodesOf(scene, moved).map((node) => node.position)).toEqual(before.map((node) => node.position));
});

test("neighbours of one look become one element, texts and fills stay apart, and the order is kept", () => {
  const stroke = { colour: "ink", width: 1 } as const;
  const line = (x: number) => ({ kind: "line", x1: x, y1: 0, x2: x, y2: 9, stroke }) as const;
  const text = { kind: "text", x: 0, y: 0, text: "<b>", size: 13, colour: "ink" } as const;
  const marks = mergeMarks([
    line(1),
    line(2),
    text,
    line(3),
    { kind: "group", x: 10, y: 0, items: [line(4)] },
  ]);
  expect(marks.map((mark) => (mark.kind === "outline" ? mark.d : mark.item.text))).toEqual([
    "M1 0L1 9M2 0L2 9",
    "<b>",
    "M3 0L3 9M14 0L14 9",
  ]);
});

test("an ink that no standard names is the unknown pigment, whatever a file says", () => {
  expect(cssInk("wire:RD")).toBe("var(--wire-RD, var(--wire-unknown))");
  expect(cssInk("wire:red);background:url(x")).toBe("var(--wire-unknown)");
  expect(cssInk("none")).toBe("none");
});

test("parts, contacts and wires are said with function, colour and what they are joined to", () => {
  expect(sayPart(harness.parts[built.at("X2.1").part]!)).toBe("X2, connector, 3 contacts");
  expect(sayContact(harness, traced, built.at("X1.A4"))).toBe(
    "X1.A4, constant feed, red lead, joined by W1 to XJ1.1",
  );
  expect(sayContact(harness, traced, built.at("X1.A7"))).toBe("X1.A7, switched feed, yellow lead, no wire");
  expect(sayWire(harness, Object.values(harness.wires)[0]!)).toBe("W1, red, from X1.A4 to XJ1.1");
});

test("tracing a contact lifts its whole circuit through the joint; a bare contact lifts nothing", () => {
  const lifted = liftedBy(circuitMeant(traced, built.at("X2.1"), nothing));
  expect([...lifted!.wires]).toEqual(["w:W1", "w:W2"]);
  expect(lifted!.parts.has(built.at("X1.A4").part)).toBe(true);
  expect(liftedBy(circuitMeant(traced, built.at("X1.A7"), nothing))).toBeNull();
  expect(circuitMeant(traced, null, { ...nothing, contact: built.at("X1.A4") })).toBe(lifted!.circuit);
});

test("every open finding has a mark at the first thing it is about", () => {
  const findings = check(harness, traced);
  expect(findings.length).toBeGreaterThan(0);
  const marks = marksOf(scene, findings);
  expect(marks.flatMap((mark) => mark.findings)).toHaveLength(findings.length);
  for (const finding of findings) expect(boxOfAbout(scene, finding.about[0]!)).not.toBeNull();
});

test("Shift and click takes in, and takes out again", () => {
  const hit = { kind: "part", part: built.at("X1.A4").part } as const;
  const once = clicked(nothing, hit, true);
  expect(once.parts.has(hit.part)).toBe(true);
  expect(clicked(once, hit, true).parts.size).toBe(0);
  expect(clicked(once, { kind: "nothing" }, false).parts.size).toBe(0);
  expect(clicked(once, { kind: "nothing" }, true)).toBe(once);
});

describe("readFragment", () => {
  test("reads what was copied", async () => {
    const fragment = copyFragment(
      harness,
      new Set(Object.values(harness.parts).map((part) => part.id)),
      new Set(),
    );
    expect(await readFragment(JSON.stringify(fragment))).toEqual(fragment);
  });
  test.each([
    ["no JSON", '{"pigtailFragment":1,'],
    ["other text", "X1.A4\tconstant feed\tRD"],
    ["no parts", '{"pigtailFragment":1}'],
    [
      "a part that is none",
      '{"pigtailFragment":1,"parts":[{"kind":"bomb"}],"wires":[],"cables":[],"places":{}}',
    ],
  ])("gives null for %s", async (_name, text) => {
    expect(await readFragment(text)).toBeNull();
  });
});
