import type { Cavity, Harness, Part, Wire } from "../../src/graph/harness.ts";
import { trace } from "../../src/graph/trace.ts";
import { Context } from "../../src/rules/context.ts";
import type { Facet } from "../../src/rules/facets.ts";
import { FIELD_FACETS } from "../../src/rules/facets-changed.ts";
import type { Rule } from "../../src/rules/rule.ts";

type Fields = Readonly<Record<string, Facet | readonly Facet[]>>;

/** Watches which facets of a harness are read. */
class Recorder {
  readonly read = new Set<Facet>();
  isOn = false;

  watch<T extends object>(value: T, fields: Fields, inner: (field: string, value: unknown) => unknown): T {
    const kept = new Map<string, unknown>();
    return new Proxy(value, {
      get: (target, field, receiver) => {
        const plain = Reflect.get(target, field, receiver) as unknown;
        if (typeof field !== "string") return plain;
        if (this.isOn && Object.hasOwn(fields, field)) this.note(fields[field]!);
        if (!kept.has(field)) kept.set(field, inner(field, plain));
        return kept.get(field);
      },
    });
  }

  note(facet: Facet | readonly Facet[]): void {
    for (const one of typeof facet === "string" ? [facet] : facet) this.read.add(one);
  }
}

const same = (_: string, value: unknown) => value;

function watched(recorder: Recorder, harness: Harness): Harness {
  // A lead that changes changes several facets at once: who reads one of them is asked again.
  const ofCavity = { ...FIELD_FACETS.cavity, lead: "parts" } as Fields;
  const cavity = (one: Cavity) => recorder.watch(one, ofCavity, same);
  const part = (one: Part) =>
    recorder.watch(
      one,
      { ...FIELD_FACETS.common, ...FIELD_FACETS.part[one.kind] } as Fields,
      (field, value) => (field === "cavities" ? (value as Cavity[]).map(cavity) : value),
    );
  const wire = (one: Wire) => recorder.watch(one, FIELD_FACETS.wire as Fields, same);
  const parts = Object.fromEntries(Object.entries(harness.parts).map(([id, one]) => [id, part(one)]));
  const wires = Object.fromEntries(Object.entries(harness.wires).map(([id, one]) => [id, wire(one)]));
  const sections: Fields = {
    parts: "parts",
    wires: "wiring",
    cables: "cables",
    runs: "runs",
    settings: "settings",
    titleBlock: "title",
    testRecord: "tests",
    photos: "tests",
  };
  return recorder.watch({ ...harness, parts, wires } as Harness, sections, same);
}

/** The facets that a rule really reads of a harness, its messages and the edits of its cures included. */
export function facetsRead(rule: Rule, harness: Harness): ReadonlySet<Facet> {
  const recorder = new Recorder();
  const seen = watched(recorder, harness);
  const traced = trace(seen);
  recorder.isOn = true;
  for (const found of rule.check(new Context(seen, traced)))
    void [found.message, found.remedy, found.consequence];
  return recorder.read;
}
