import { functionOf } from "../../catalogue/functions.ts";
import { terminalOf } from "../../catalogue/terminals.ts";
import type { Idea } from "../../catalogue/words/english.ts";
import type { Candidate, FunctionReading } from "../chart.ts";
import { remembering } from "../remember.ts";
import { ideasOf } from "./ideas-of.ts";
import { fitting, PATTERNS, weightOf } from "./patterns.ts";
import { plainWords } from "./plain-words.ts";

const NOTHING: FunctionReading = { candidates: [], certain: false };

/** What a word that nobody knows takes away from the certainty. */
const UNKNOWN_WEIGHT = 0.4;
/** A long remark behind a clear word does not make it doubtful for ever. */
const MOST_UNKNOWN = 3;
/** How fast a wording that explains less loses against one that explains more. */
const STEEPNESS = 7;

/** What a sense in a further language weighs against the first. */
const OTHER_LANGUAGE = 0.2;

/**
 * Reads what a conductor is for from a chart's words, in any of the catalogue's languages and any word order,
 * tolerating misspellings.
 * @returns every function that the words may mean with its share; an ambiguous wording ("12 V", "remote") carries
 * its alternatives and is not certain; nothing where the words fit no function
 */
export function readFunction(text: string): FunctionReading {
  return readPlain(plainWords(text));
}

const readPlain = remembering((plain): FunctionReading => (plain === "" ? NOTHING : read(plain)));

function read(plain: string): FunctionReading {
  const bare = terminalIn(plain, BARE_TERMINAL);
  if (bare) return { candidates: [{ function: bare, share: 1 }], certain: true };
  const apart = withoutLastDash(plain);
  if (apart) return apart;
  const named = terminalIn(plain, NAMED_TERMINAL);
  const words = readWords(named ? plain.replace(NAMED_TERMINAL, " ") : plain);
  if (!named) return words;
  const agreed = words.candidates.some((one) => one.function === named);
  if (agreed || !words.certain) return { candidates: [{ function: named, share: 1 }], certain: true };
  // Words and terminal number contradict each other: a person decides.
  return { candidates: shares([...words.candidates, { function: named, share: 1 }]), certain: false };
}

/**
 * A dash that stands apart at the end is a minus, or what parted the words from a colour. Where the words without it
 * are clear and mean something else, nobody can tell: a person is asked.
 * @returns `null` where there is no such dash, or the words need it to be clear
 */
function withoutLastDash(plain: string): FunctionReading | null {
  if (!/\S\s+-$/.test(plain)) return null;
  const bare = readPlain(plain.replace(/\s+-$/, ""));
  const [first] = bare.candidates;
  if (!first) return null;
  const { group, polarity, active } = functionOf(first.function);
  if (!bare.certain && group !== "feed") return null;
  if (group === "ground" || polarity === "minus") return bare;
  const signed = readWords(plain);
  if (active === "ground" || signed.candidates[0]?.function === first.function) return bare;
  return { candidates: shares([...bare.candidates, ...signed.candidates]), certain: false };
}

/** A text that is a terminal number of DIN 72552 and nothing else: "30", "+15", "Kl. 58d". */
const BARE_TERMINAL =
  /^(?:kl|klemme|terminal|term|borne|borna|morsetto|klem|zacisk|t|din)?[.\s]*[+-]?\s?(\d{2}[a-z]?)$/;
/** A terminal number inside a text, where it is called one: "Dauerplus (Kl. 30)", "+30 battery". */
const NAMED_TERMINAL =
  /\(?\b(?:kl|klemme|terminal|borne|borna|morsetto|klem|zacisk|din)\b[.\s]*(\d{2}[a-z]?)\b\)?|\((\d{2}[a-z]?)\)|(?<![a-z0-9])[+](15|30|58|54)\b(?!\s?v)/;

function terminalIn(plain: string, form: RegExp): string | null {
  const match = form.exec(plain);
  const number = match?.[1] ?? match?.[2] ?? match?.[3];
  if (!number) return null;
  return terminalOf(number)?.function ?? null;
}

function readWords(plain: string): FunctionReading {
  const { alternatives, unknown } = ideasOf(plain);
  const scored = alternatives.map((ideas) => score(new Set(ideas), unknown.length));
  const most = Math.max(0, ...scored.map((one) => one.coverage));
  // Senses that explain the words equally well (a word of two languages) stand beside each other; English words
  // come first, for charts of every country borrow their short forms.
  const equals = scored.filter((one) => one.coverage > most - 1e-9 && one.candidates.length > 0);
  const best: Scored = { coverage: most, candidates: merge(equals.map((one) => one.candidates)) };
  if (best.candidates.length === 0) {
    const [ideas] = alternatives;
    return ideas?.length ? unfinished(new Set(ideas)) : NOTHING;
  }
  const [first] = best.candidates;
  return {
    candidates: best.candidates,
    certain: first !== undefined && first.share >= 0.88 && best.coverage >= 0.6,
  };
}

type Scored = {
  /** The part of the words, by weight, that the best pattern explains. */
  readonly coverage: number;
  readonly candidates: readonly Candidate[];
};

/** A function can only be meant by words of a ground if its own wording has one of these. */
const SAY_RETURN: readonly Idea[] = ["ground", "minus", "shield", "return", "drain", "chassis"];

function score(ideas: ReadonlySet<Idea>, unknown: number): Scored {
  let total = Math.min(unknown, MOST_UNKNOWN) * UNKNOWN_WEIGHT;
  const isGround = ideas.has("ground") || ideas.has("return");
  // "Pump earth", "fridge earth": what is grounded says little beside that it is a ground.
  for (const idea of ideas)
    total += weightOf(idea) * (isGround && idea !== "ground" && idea !== "return" ? 0.3 : 1);
  const found = new Map<string, { readonly ideas: Set<Idea>; most: number; share: number }>();
  for (const pattern of fitting(ideas)) {
    if (isOpposite(pattern.function, ideas)) continue;
    if (isGround && !SAY_RETURN.some((idea) => pattern.required.includes(idea))) continue;
    const used = [...pattern.required, ...pattern.optional.filter((idea) => ideas.has(idea))];
    const explained = weigh(used);
    const one = found.get(pattern.function) ?? { ideas: new Set(), most: 0, share: 0 };
    for (const idea of used) one.ideas.add(idea);
    // Its fullest wording says how likely the function is: one of its own beats one that it shares.
    if (explained > one.most + 1e-9 || (explained > one.most - 1e-9 && pattern.share > one.share)) {
      one.most = explained;
      one.share = pattern.share;
    }
    found.set(pattern.function, one);
  }
  // Two wordings of one function in a row ("battery, constant 12 V") explain together.
  const explained = new Map([...found].map(([name, one]) => [name, weigh(one.ideas)]));
  const most = Math.max(0, ...explained.values());
  if (most === 0) return { coverage: 0, candidates: [] };
  const weighed: Candidate[] = [];
  for (const [name, one] of found) {
    const share = one.share * Math.exp(-STEEPNESS * (most - explained.get(name)!));
    if (share > 0.02) weighed.push({ function: name, share });
  }
  // "Refrigerator negative", "pump -": whose return it is says little beside that it is one.
  const [best] = shares(weighed);
  if (best?.function === "ground" && ideas.has("minus") && !isGround)
    total -= 0.7 * (weigh(ideas) - weigh(["minus"]));
  return { coverage: Math.min(1, most / total), candidates: shares(weighed) };
}

/** A text that says minus means no plus, nor anything that stands at supply voltage, whatever else fits. */
function isOpposite(name: string, ideas: ReadonlySet<Idea>): boolean {
  if (ideas.has("plus") === ideas.has("minus")) return false;
  const { polarity, active } = functionOf(name);
  if (polarity !== null) return !ideas.has(polarity);
  return active === "supply" && ideas.has("minus");
}

function merge(lists: readonly (readonly Candidate[])[]): readonly Candidate[] {
  if (lists.length < 2) return lists[0] ?? [];
  const sums = new Map<string, number>();
  for (const [index, list] of lists.entries()) {
    for (const one of list) {
      const share = one.share * (index === 0 ? 1 : OTHER_LANGUAGE);
      sums.set(one.function, (sums.get(one.function) ?? 0) + share);
    }
  }
  return shares([...sums].map(([name, share]) => ({ function: name, share })));
}

function weigh(ideas: Iterable<Idea>): number {
  let sum = 0;
  for (const idea of ideas) sum += weightOf(idea);
  return sum;
}

/** Makes shares add up to 1, likeliest first, and leaves out what is next to nothing. */
function shares(candidates: readonly Candidate[]): readonly Candidate[] {
  const total = candidates.reduce((sum, one) => sum + one.share, 0);
  return candidates
    .map((one) => ({ ...one, share: one.share / total }))
    .filter((one) => one.share >= 0.02)
    .sort((a, b) => b.share - a.share || (a.function < b.function ? -1 : 1));
}

/** What a wording that leaves something out may be short for: "tail" for a left or a right one. */
function unfinished(ideas: ReadonlySet<Idea>): FunctionReading {
  const said = [...ideas].filter((idea) => weightOf(idea) >= 0.5);
  if (said.length === 0) return NOTHING;
  const found = new Map<string, number>();
  for (const { function: name, required, optional, share } of PATTERNS) {
    if (!said.every((idea) => required.includes(idea) || optional.includes(idea))) continue;
    const missing = required.reduce((sum, idea) => sum + (ideas.has(idea) ? 0 : weightOf(idea)), 0);
    if (missing > 1.5) continue;
    found.set(name, Math.max(found.get(name) ?? 0, share * Math.exp(-missing)));
  }
  if (found.size === 0 || found.size > 12) return NOTHING;
  const candidates = [...found].map(([name, share]) => ({ function: name, share }));
  return { candidates: shares(candidates), certain: false };
}
