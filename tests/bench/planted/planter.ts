import type { Harness } from "../../../src/graph/harness.ts";
import type { Finding } from "../../../src/rules/rule.ts";
import { Yard } from "./yard.ts";

/** A clean harness, the same with one fault, and what the fault is about, by designation ("X1.A4", "W3", "F1"). */
export type Planted = {
  readonly clean: Harness;
  readonly faulty: Harness;
  readonly where: readonly string[];
};

/** One way in which one entry of the reference goes wrong. */
export type Planter = {
  /** The entry of the catalogue of faults: "A01". */
  readonly entry: string;
  readonly name: string;
  /** Rules any of which counts as having found it. "relays:" stands for every rule of a group. */
  readonly rules: readonly string[];
  /** What is as true of the faulty harness and is no false alarm. */
  readonly also: readonly string[];
  readonly plant: (seed: number) => Planted;
};

type Options = { readonly volts?: readonly (12 | 24)[]; readonly also?: readonly string[] };

/**
 * @param stand makes the clean harness and gives the names of what stands in it
 * @param spoil does the harm, and says where
 */
export function planter<T>(
  entry: string,
  name: string,
  rules: readonly string[],
  stand: (yard: Yard) => T,
  spoil: (yard: Yard, job: T) => readonly string[],
  { volts = [12], also = [] }: Options = {},
): Planter {
  const plant = (seed: number): Planted => {
    const yard = new Yard(seed * 7919 + 13, volts[seed % volts.length]!);
    const job = stand(yard);
    const clean = yard.harness;
    const where = spoil(yard, job);
    return { clean, faulty: yard.harness, where };
  };
  return { entry, name, rules, also, plant };
}

/** Whether a finding speaks of one of those places. A contact counts as its part. */
export function speaksOf(harness: Harness, finding: Finding, where: readonly string[]): boolean {
  const names = new Set(where.map((one) => one.split(".")[0]!));
  return finding.about.some((about) => {
    const thing = "wire" in about ? harness.wires[about.wire] : harness.parts[about.part];
    return names.has(thing?.designation ?? "");
  });
}

export function isOne(finding: Finding, rules: readonly string[]): boolean {
  return rules.includes(finding.rule) || rules.includes(`${finding.group}:`);
}
