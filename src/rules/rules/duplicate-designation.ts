import { type Edit, group } from "../../graph/edits/edit.ts";
import { Names } from "../../graph/make.ts";
import { type About, defineRule, type Found, fixWith } from "../rule.ts";

export default defineRule({
  meta: {
    id: "duplicate-designation",
    severity: "fault",
    summary: "No two parts and no two wires bear one designation.",
    source: "ASME Y14.44: no duplicate reference designations in one set (through a summary)",
  },
  *check({ parts, harness }) {
    for (const [name, same] of sharedNames(parts)) {
      yield twice(
        "parts",
        name,
        same.map((part) => ({ part: part.id })),
        (names) =>
          same.slice(1).map((part) => ({
            kind: "change-part",
            part: part.id,
            changes: { designation: names.designation(part.kind) },
          })),
      );
    }
    for (const [name, same] of sharedNames(Object.values(harness.wires))) {
      yield twice(
        "wires",
        name,
        same.map((wire) => ({ wire: wire.id })),
        (names) =>
          same.slice(1).map((wire) => ({
            kind: "change-wire",
            wire: wire.id,
            changes: { designation: names.wireDesignation() },
          })),
      );
    }

    function twice(
      what: string,
      name: string,
      about: readonly About[],
      renumber: (names: Names) => readonly Edit[],
    ): Found {
      const others = about.length - 1;
      return {
        message: `${others === 1 ? "Two" : about.length} ${what} are called ${name}.`,
        consequence: "Whoever reads the drawing cuts or measures the wrong one.",
        remedy: `Renumber ${others === 1 ? "one of them" : "all but one of them"}.`,
        about,
        fix: fixWith(others === 1 ? `Renumber the second ${name}` : `Renumber ${others} of them`, () =>
          group(`renumber ${name}`, renumber(new Names(harness))),
        ),
      };
    }
  },
});

function sharedNames<T extends { readonly designation: string }>(things: readonly T[]): [string, T[]][] {
  const byName = new Map<string, T[]>();
  for (const thing of things) {
    const same = byName.get(thing.designation);
    if (same) same.push(thing);
    else byName.set(thing.designation, [thing]);
  }
  return [...byName].filter(([, same]) => same.length > 1);
}
