import { functionOf, partnerOf } from "../../catalogue/functions.ts";
import { terminalOf } from "../../catalogue/terminals.ts";
import type { Candidate, Chart, FunctionReading, Lead } from "../chart.ts";
import { plainWords } from "../words/plain-words.ts";

/** A lead with its reading as the rest of its chart makes it likely. */
export type InContext = {
  readonly lead: Lead;
  readonly reading: FunctionReading;
  /** What the rest of the chart decided, in words; "" where nothing had to be decided. */
  readonly because: string;
};

/** How much of its share a candidate keeps when another lead of the chart certainly has that function. */
const TAKEN = 0.15;
/** How much an engine's charging circuit keeps in a chart that has nothing else of an engine. */
const NO_ENGINE = 0.2;

/** How much likelier a sense is where its chart has others of its kind: "D+" among USB leads is no alternator's. */
const AT_HOME = 5;

const ENGINE = new Set([
  "alternator-lamp",
  "alternator-field",
  "alternator-phase",
  "starter-signal",
  "oil-pressure",
  "coolant-temperature",
  "tachometer",
  "glow-plug",
  "ignition-coil",
  "ignition-cut",
  "alternator-output",
  "fuel-level",
]);

/** Kinds of leads that come together. */
const FAMILIES = new Set([
  "engine",
  "usb",
  "line",
  "speaker",
  "bilge",
  "trim",
  "wiper",
  "camera",
  "steering",
  "trailer",
]);

function familyOf(name: string): string {
  return ENGINE.has(name) ? "engine" : name.slice(0, name.indexOf("-") < 0 ? undefined : name.indexOf("-"));
}

/**
 * Reads the leads of a chart in the light of each other: what one lead certainly is, another one of an ambiguous
 * wording hardly is too; the two halves of a pair have opposite polarity.
 */
export function inContext(chart: Chart): readonly InContext[] {
  const certain = new Set<string>();
  for (const { reading } of chart.leads) {
    if (reading.certain && reading.candidates[0]) certain.add(reading.candidates[0].function);
  }
  const families = new Set([...certain].map(familyOf));
  const leads = readSigns(readTerminals(chart.leads));
  const halves = readHalves(leads);
  return leads.map((lead) => {
    const half = halves.get(lead);
    if (half) return half;
    const { reading } = lead;
    if (reading.certain || reading.candidates.length < 2) return { lead, reading, because: "" };
    return decide(lead, certain, families);
  });
}

/** How likely "left +" is the front one in a chart that tells no front from rear. */
const TWO_CHANNELS = 5;

function decide(lead: Lead, certain: ReadonlySet<string>, families: ReadonlySet<string>): InContext {
  const before = lead.reading.candidates;
  const isTwoChannel = ![...certain].some((name) => /^speaker-(front|rear)-/.test(name));
  const weighed = before.map((one) => {
    let { share } = one;
    if (certain.has(one.function)) share *= TAKEN;
    if (isTwoChannel && one.function.startsWith("speaker-front-")) share *= TWO_CHANNELS;
    const family = familyOf(one.function);
    if (FAMILIES.has(family)) share *= families.has(family) ? AT_HOME : 1;
    if (one.function === "alternator-output" && !families.has("engine")) share *= NO_ENGINE;
    return { ...one, share };
  });
  const candidates = normal(weighed);
  const [first] = candidates;
  const isCertain = (first?.share ?? 0) >= 0.88 && !saysOnlyVolts(before);
  const because =
    isCertain && first
      ? `“${lead.text}” is read as ${functionOf(first.function).name}, for nothing else in its chart leaves another sense`
      : "";
  return { lead, reading: { candidates, certain: isCertain }, because };
}

/** "12 V", "power": a bare supply never becomes certain by what stands beside it. */
function saysOnlyVolts(candidates: readonly Candidate[]): boolean {
  const constant = candidates.find((one) => one.function === "constant-feed");
  const switched = candidates.find((one) => one.function === "switched-feed");
  return (constant?.share ?? 0) >= 0.3 && (switched?.share ?? 0) >= 0.3;
}

function normal(candidates: readonly Candidate[]): readonly Candidate[] {
  const total = candidates.reduce((sum, one) => sum + one.share, 0);
  return candidates
    .map((one) => ({ ...one, share: one.share / total }))
    .sort((a, b) => b.share - a.share || (a.function < b.function ? -1 : 1));
}

/** "Battery -" beside "Battery +": the dash is a minus, and what it is the minus of is grounded. */
function readSigns(leads: readonly Lead[]): readonly Lead[] {
  const plus = new Set(
    leads.flatMap(({ text }) => {
      const plain = plainWords(text);
      return /[+]$/.test(plain) ? [plain.replace(/\s*[+]$/, "")] : [];
    }),
  );
  return leads.map((lead) => {
    const plain = plainWords(lead.text);
    const isHalf = !lead.reading.certain && /\s-$/.test(plain) && plus.has(plain.replace(/\s*-$/, ""));
    if (!isHalf || !lead.reading.candidates.some((one) => one.function === "ground")) return lead;
    return { ...lead, reading: { candidates: [{ function: "ground", share: 1 }], certain: true } };
  });
}

/**
 * Where a chart names its leads by terminal numbers of DIN 72552 ("53a", "B+", "31"), the number says what the words
 * leave open. A housing numbered 1, 2, 3 … is no such chart.
 */
function readTerminals(leads: readonly Lead[]): readonly Lead[] {
  const named = leads.filter((lead) => lead.label !== null);
  const terminals = named.filter((lead) => terminalOf(lead.label!) !== null);
  const counts =
    named.every((lead) => /^\d{1,2}$/.test(lead.label!)) && named.some((lead) => Number(lead.label) <= 12);
  if (terminals.length < 3 || terminals.length < 0.6 * leads.length || counts) return leads;
  return leads.map((lead) => {
    const name = lead.label === null ? null : (terminalOf(lead.label)?.function ?? null);
    if (name === null || lead.reading.certain) return lead;
    return { ...lead, reading: { candidates: [{ function: name, share: 1 }], certain: true } };
  });
}

/**
 * Two leads of one channel whose polarity the words leave open: where one says its own, the other has the
 * opposite; where neither does, the one with a tracer is the minus, as is customary, but a person is asked.
 */
function readHalves(leads: readonly Lead[]): ReadonlyMap<Lead, InContext> {
  const open = new Map<string, Lead[]>();
  const said = new Map<string, Lead>();
  for (const lead of leads) {
    const [first, second] = lead.reading.candidates;
    if (!first) continue;
    if (lead.reading.certain) said.set(first.function, lead);
    else if (second && partnerOf(first.function) === second.function && first.share + second.share > 0.9) {
      const key = [first.function, second.function].sort().join();
      open.set(key, [...(open.get(key) ?? []), lead]);
    }
  }
  const found = new Map<Lead, InContext>();
  for (const [key, list] of open) {
    const [one, other] = key.split(",") as [string, string];
    const [a, b] = list;
    if (!a || list.length > 2) continue;
    if (!b) {
      const taken = said.has(one) ? one : said.has(other) ? other : null;
      if (taken) found.set(a, sure(a, taken === one ? other : one, "the other half of its pair is stated"));
      continue;
    }
    const traced = [a, b].filter((lead) => lead.colour?.tracer);
    if (traced.length !== 1) continue;
    const minus = functionOf(one).polarity === "minus" ? one : other;
    const plus = minus === one ? other : one;
    for (const lead of [a, b]) {
      const name = traced.includes(lead) ? minus : plus;
      found.set(
        lead,
        sure(lead, name, "the lead with the tracer is taken for the minus, as is customary", 0.85),
      );
    }
  }
  return found;
}

function sure(lead: Lead, name: string, because: string, share = 0.95): InContext {
  const rest = partnerOf(name);
  const candidates = [{ function: name, share }, ...(rest ? [{ function: rest, share: 1 - share }] : [])];
  return { lead, reading: { candidates, certain: share >= 0.88 }, because };
}
