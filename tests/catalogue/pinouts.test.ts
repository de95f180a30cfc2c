import { describe, expect, test } from "vitest";
import { functionOf } from "../../src/catalogue/functions.ts";
import { cavitiesOf, PINOUT_GROUPS, PINOUTS } from "../../src/catalogue/pinouts.ts";
import type { PartId } from "../../src/graph/harness.ts";
import { makePart } from "../../src/graph/make.ts";
import { connector } from "../../src/graph/schema/parts.ts";

test("each ready connector stands once, and its titles tell them apart", () => {
  expect(new Set(PINOUTS.map((one) => one.id)).size).toBe(PINOUTS.length);
  expect(new Set(PINOUTS.map((one) => one.title)).size).toBe(PINOUTS.length);
  expect(new Set(PINOUTS.map((one) => one.group))).toEqual(new Set(Object.keys(PINOUT_GROUPS)));
});

describe.each(PINOUTS.map((pinout) => [pinout.id, pinout] as const))("%s", (_id, pinout) => {
  test("names its sources and a caution, and each row a function of the vocabulary", () => {
    expect(pinout.source.length).toBeGreaterThan(40);
    expect(pinout.caution.length).toBeGreaterThan(40);
    for (const item of pinout.rows) expect(functionOf(item.function).id).toBe(item.function);
  });

  test("no cavity stands twice, and a face shows each once", () => {
    const labels = pinout.rows.map((item) => item.cavity);
    expect(new Set(labels).size).toBe(labels.length);
    if (!pinout.face) return;
    const shown = pinout.face.rows.flat().filter((number) => number > 0);
    expect([...shown].sort((a, b) => a - b)).toEqual(labels.map((_, index) => index + 1));
  });

  test("what is disputed says how", () => {
    for (const item of pinout.rows) {
      if (item.confidence === "disputed") {
        expect(item.note, item.cavity).toMatch(/source|editions|older|other set|not listed/i);
      }
    }
  });

  test("makes a connector that a harness file can hold, from either side", () => {
    for (const side of ["vehicle", "equipment"] as const) {
      const part = makePart("connector", "p:1" as PartId, "X1", {
        cavities: cavitiesOf(pinout, side),
        form: pinout.form,
        shell: pinout.shell,
        chart: { title: pinout.title, edition: pinout.edition, date: "", measured: false },
      });
      expect(connector.safeParse(part).success).toBe(true);
    }
  });

  test("seen from the other side what gave takes, and no lead has a colour", () => {
    const own = cavitiesOf(pinout, pinout.side);
    const other = cavitiesOf(pinout, pinout.side === "vehicle" ? "equipment" : "vehicle");
    for (const [index, cavity] of other.entries()) {
      const { direction } = own[index]!;
      expect(cavity.lead).toBeNull();
      if (direction === "gives") expect(cavity.direction).toBe("takes");
      else if (direction === "takes") expect(cavity.direction).toBe("gives");
      else expect(cavity.direction).toBe(direction);
    }
  });

  test("asks nothing of a cavity that stays empty or is the maker's own", () => {
    for (const cavity of cavitiesOf(pinout, pinout.side)) {
      const free = cavity.function === "not-used" || cavity.function === "unknown";
      expect(cavity.use).toBe(free ? "optional" : "expected");
    }
  });
});
