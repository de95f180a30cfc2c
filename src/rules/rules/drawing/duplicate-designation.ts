import { type Edit, group } from "../../../graph/edits/edit.ts";
import type { Part, Wire } from "../../../graph/harness.ts";
import { Names } from "../../../graph/make.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { type About, defineRule, type Found, fixWith } from "../../rule.ts";

export default defineRule({
  meta: {
    id: "duplicate-designation",
    group: "drawing",
    severity: "fault",
    summary: "No two parts and no two wires bear one designation.",
    source: "ASME Y14.44: no duplicate reference designations in one set (through a summary)",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check({ harness }) {
    for (const [name, same] of sharedNames<Part>(harness.parts)) {
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
    for (const [name, same] of sharedNames<Wire>(harness.wires)) {
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

type Named = { readonly designation: string };
const remembered = new WeakMap<object, [string, Named[]][]>();

/** Parts and wires are sections of their own: an edit to one leaves what is known of the other. */
function sharedNames<T extends Named>(section: Readonly<Record<string, T>>): [string, T[]][] {
  let shared = remembered.get(section);
  if (!shared) {
    shared = findShared(Object.values(section));
    remembered.set(section, shared);
  }
  return shared as [string, T[]][];
}

/** Most harnesses have none, so a list is made only where a name comes up again. */
function findShared<T extends Named>(things: readonly T[]): [string, T[]][] {
  const first = new Map<string, T>();
  const shared = new Map<string, T[]>();
  for (const thing of things) {
    const earlier = first.get(thing.designation);
    if (!earlier) {
      first.set(thing.designation, thing);
      continue;
    }
    const same = shared.get(thing.designation);
    if (same) same.push(thing);
    else shared.set(thing.designation, [earlier, thing]);
  }
  return [...shared];
}
