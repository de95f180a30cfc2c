import { describe, expect, test } from "vitest";
import {
  contactFigures,
  farFigures,
  scaleAt,
  wireFigures,
} from "../../../src/editor/readings/figures-model.ts";
import { ampsBand, bandOf, standingOf } from "../../../src/editor/readings/ink-model.ts";
import {
  conditionsShown,
  switchesShown,
  wordsOfState,
  wordsOfSum,
} from "../../../src/editor/readings/key-bar-model.ts";
import { AS_IT_IS } from "../../../src/editor/readings/readings-store.ts";
import {
  sayContactReading,
  sayWireReading,
  writeAmps,
  writeDrop,
  writePercent,
  writeVolts,
} from "../../../src/editor/readings/say-readings.ts";
import { stateTags, warningTags } from "../../../src/editor/readings/tags-model.ts";
import { AMPLIFIER_EFFICIENCY, amplified, fullDraws } from "../../../src/editor/readings/what-if.ts";
import type { KeyState } from "../../../src/electrical/operate/key-state.ts";
import { operate } from "../../../src/electrical/operate/operate.ts";
import type { WireReading } from "../../../src/electrical/operate/readings.ts";
import { trace } from "../../../src/graph/trace.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { idOf, partNamed, sample, wireNamed } from "./a-sample.ts";

const lamps = sample("work-lamp-relay");
const lit: KeyState = { key: "run", conditions: [], closed: [idOf(lamps, "S1")] };
const sound = sample("amplified-sound");
const playing: KeyState = { key: "run", conditions: ["unit-on"] };

function shown(harness: typeof lamps, state: KeyState) {
  const traced = trace(harness);
  return { scene: makeScene(harness, traced), readings: operate(harness, traced, state) };
}

const reading = (part: Partial<WireReading>): WireReading => ({
  amps: 1,
  drop_V: 0.01,
  watts: 0.01,
  percentOfAmpacity: 10,
  ...part,
});

describe("figures as they are written", () => {
  test.each([
    [12.361, "12.36"],
    [-0.314, "−0.31"],
    [0.004, "0"],
    [-0.004, "0"],
  ])("%d V", (volts, text) => expect(writeVolts(volts)).toBe(text));
  test.each([
    [0.0001, "0 A"],
    [0.004, "4 mA"],
    [0.0994, "99 mA"],
    [0.0996, "0.1 A"],
    [-3.24, "3.2 A"],
    [9.96, "10 A"],
    [35.4, "35 A"],
    [1234.5, "1230 A"],
  ])("%d A", (amps, text) => expect(writeAmps(amps)).toBe(text));
  test.each([
    [0.0001, "0 V"],
    [0.0381, "38 mV"],
    [0.0996, "0.10 V"],
    [0.314, "0.31 V"],
  ])("%d V dropped", (volts, text) => expect(writeDrop(volts)).toBe(text));
  test("a share that is more than nothing is not written as nothing", () => {
    expect(writePercent(0.2)).toBe("<1 %");
    expect(writePercent(0)).toBe("0 %");
    expect(writePercent(99.6)).toBe("100 %");
  });
});

describe("bands", () => {
  test("more current is never thinner, and no band is wider than the room between wires allows", () => {
    let before = 0;
    for (const amps of [0.05, 0.2, 1, 3, 10, 30, 100, 1000]) {
      const width = ampsBand(amps)?.width ?? 0;
      expect(width).toBeGreaterThanOrEqual(before);
      expect(width).toBeLessThanOrEqual(15);
      before = width;
    }
    expect(ampsBand(0.01)).toBeNull();
  });
  test.each([
    [20, null],
    [30, "25 to 60 %"],
    [61, "60 to 80 %"],
    [100, "80 to 100 %"],
    [100.5, "over 100 %"],
  ])("a load of %d %%", (percentOfAmpacity, words) => {
    expect(bandOf("load", reading({ percentOfAmpacity }), 12)?.words ?? null).toBe(words);
  });
  test("a drop is judged by the system's volts", () => {
    expect(bandOf("drop", reading({ drop_V: 0.4 }), 12)?.words).toBe("over 3 %");
    expect(bandOf("drop", reading({ drop_V: 0.4 }), 24)?.words).toBe("1 to 3 %");
  });
  test("wires of a load that is switched off are dead, its feed is live", () => {
    const { readings } = shown(lamps, { key: "run", conditions: [] });
    expect(standingOf(readings, wireNamed(lamps, "W5"))).toBe("live");
    expect(standingOf(readings, wireNamed(lamps, "W8"))).toBe("dead");
    const closed = shown(lamps, lit).readings;
    expect(standingOf(closed, wireNamed(lamps, "W8"))).toBe("carries");
  });
  test("a line of speakers hangs in the air", () => {
    const { readings } = shown(sound, playing);
    expect(standingOf(readings, wireNamed(sound, "W21"))).toBe("floating");
  });
});

describe("figures on the drawing", () => {
  test("every wire that carries current has its figure, and none lies on another", () => {
    const { scene, readings } = shown(lamps, lit);
    const figures = wireFigures(scene, readings, "amps");
    const carrying = [...readings.wires].filter(([, { amps }]) => Math.abs(amps) > 0.001);
    expect(new Set(figures.map(({ wire }) => wire))).toEqual(new Set(carrying.map(([id]) => id)));
    for (const [index, a] of figures.entries()) {
      for (const b of figures.slice(index + 1)) {
        const across = ({ upright, length }: typeof a) => (upright ? 13 : length);
        const down = ({ upright, length }: typeof a) => (upright ? length : 13);
        const apart =
          Math.abs(a.x - b.x) >= (across(a) + across(b)) / 2 ||
          Math.abs(a.y - b.y) >= (down(a) + down(b)) / 2;
        expect(apart, `${a.text} and ${b.text}`).toBe(true);
      }
    }
  });
  test("the arrow points from the battery, and back to its minus", () => {
    const { scene, readings } = shown(lamps, lit);
    const figures = new Map(wireFigures(scene, readings, "amps").map((figure) => [figure.wire, figure]));
    const out = wireNamed(lamps, "W1");
    const placed = scene.wires.get(out.id)!;
    const fromBattery = out.ends[0] !== "loose" && out.ends[0].part === idOf(lamps, "G1");
    const rightwards = placed.path.at(-2)! > placed.path[0]!;
    expect(figures.get(out.id)!.flow).toBe(fromBattery === rightwards ? 1 : -1);
  });
  test("volts stand at contacts, and none in wires", () => {
    const { scene, readings } = shown(lamps, lit);
    expect(wireFigures(scene, readings, "volts")).toEqual([]);
    const figures = contactFigures(scene, readings);
    expect(figures.find(({ part }) => part === idOf(lamps, "G1"))?.text).toMatch(/^12\.\d\d V$/);
  });
  test("what floats is said to float", () => {
    const { scene, readings } = shown(sound, playing);
    const speaker = contactFigures(scene, readings).filter(({ part }) => part === idOf(sound, "P1"));
    expect(speaker.map(({ text }) => text)).toEqual(["floats", "floats"]);
  });
  test("from afar figures are written larger, in clear room only", () => {
    const { scene, readings } = shown(lamps, lit);
    expect(scaleAt(0.25) * 11.5 * 0.25).toBeGreaterThanOrEqual(11);
    expect(scaleAt(0.25) * 11.5 * 0.25).toBeLessThan(14);
    const far = farFigures(scene, readings, "volts", 2.5);
    expect(far.length).toBeGreaterThan(4);
    expect(far.every(({ text }) => /^1[12]\.\d V$/.test(text))).toBe(true);
    for (const { x, y } of far) {
      for (const part of scene.parts.values()) {
        const inside =
          x > part.x && x < part.x + part.shape.width && y > part.y && y < part.y + part.shape.height;
        expect(inside).toBe(false);
      }
    }
  });
});

describe("what is said", () => {
  const { readings } = shown(lamps, lit);
  test("a contact says its volts, and what it draws or gives", () => {
    expect(sayContactReading(readings, partNamed(lamps, "E1"), 1)).toMatch(
      /^1[12]\.\d\d V, draws 4 A, works$/,
    );
    expect(sayContactReading(readings, partNamed(lamps, "G1"), 1)).toMatch(/^12\.\d\d V, gives 8\.1 A$/);
    expect(sayContactReading(null, partNamed(lamps, "E1"), 1)).toBe("");
  });
  test("a wire says its current, from where to where, its load and its drop", () => {
    const wire = wireNamed(lamps, "W8");
    const said = sayWireReading(lamps, wire, readings.wires.get(wire.id));
    expect(said).toMatch(
      /^carries 8 A from K1\.87 to XJ2\.\d, \d+ % of what it may, drops (\d+ mV|0\.\d+ V)$/,
    );
  });
  test("the state and what it comes to stand in words", () => {
    expect(wordsOfState(lit, lamps)).toBe("Key at run, S1 closed");
    expect(wordsOfSum(readings)).toBe("12.60 V, 8.1 A drawn. Nothing is over its rating.");
  });
  test("one switch is worked by its name, many are worked together", () => {
    expect(switchesShown(lamps).map(({ designation }) => designation)).toEqual(["S1"]);
    expect(conditionsShown(lamps)).not.toContain("switches-on");
    const full = sample("full-build");
    expect(switchesShown(full)).toEqual([]);
    expect(conditionsShown(full)).toContain("switches-on");
  });
  test("what is wrong stands beside its part with a word; several warnings of one thing share it", () => {
    const { scene } = shown(lamps, lit);
    const f1 = idOf(lamps, "F1");
    const tags = warningTags(scene, [
      { code: "fuse-opens", words: "F1 opens.", about: [f1] },
      { code: "fuse-full", words: "F1 is full.", about: [f1] },
      { code: "wire-overloaded", words: "W8 is overloaded.", about: [wireNamed(lamps, "W8").id] },
      { code: "not-settled", words: "Nothing to point at.", about: [] },
    ]);
    expect(tags.map(({ word, words, severity }) => [word, words, severity])).toEqual([
      ["opens", "F1 opens. F1 is full.", "danger"],
      ["overloaded", "W8 is overloaded.", "danger"],
    ]);
  });
  test("lamps are on and the relay is pulled", () => {
    const { scene } = shown(lamps, lit);
    const words = stateTags(scene, readings).map(({ word }) => word);
    expect([...words].sort()).toEqual(["on", "on", "pulled"]);
  });
});

describe("amplifiers at full", () => {
  const amplifier = partNamed(sound, "A2");
  const powered = {
    ...sound,
    parts: { ...sound.parts, [amplifier.id]: { ...amplifier, channelPower_W: 100 } },
  } as typeof sound;
  test("each channel's power over what the amplifier makes of it", () => {
    const [only] = fullDraws(powered);
    const [part, draw] = only!;
    expect(part).toBe(amplifier.id);
    expect(draw.amps).toBeCloseTo((4 * 100) / AMPLIFIER_EFFICIENCY / 12, 9);
  });
  test("they draw more than before; without a stated power nothing changes", () => {
    const full = { ...AS_IT_IS, amplifiersAtFull: true };
    expect(amplified(powered, AS_IT_IS)).toBe(powered);
    expect(amplified(sample("reversing-camera"), full)).toEqual(sample("reversing-camera"));
    const wire = wireNamed(sound, "W2").id;
    const usual = shown(powered, playing).readings.wires.get(wire)!.amps;
    const loud = shown(amplified(powered, full), playing).readings.wires.get(wire)!.amps;
    expect(Math.abs(loud)).toBeGreaterThan(Math.abs(usual) + 5);
  });
});
