import { FUNCTIONS } from "../../catalogue/functions.ts";
import type { Idea } from "../../catalogue/words/english.ts";

/** One wording of one function. */
export type Pattern = {
  readonly function: string;
  readonly required: readonly Idea[];
  readonly optional: readonly Idea[];
  /** How likely the function is where the wording fits several. */
  readonly share: number;
};

/** Ideas that say little: what is left over of them does not make a reading doubtful. */
const LIGHT: Readonly<Partial<Record<Idea, number>>> = {
  signal: 0.2,
  wire: 0.05,
  lead: 0.05,
  circuit: 0.1,
  contact: 0.3,
  output: 0.2,
  input: 0.2,
  system: 0.1,
  vehicle: 0.1,
  radio: 0.15,
  main: 0.15,
  fused: 0.15,
  channel: 0.15,
  level: 0.3,
  control: 0.4,
  switch: 0.35,
  feed: 0.5,
  volts: 0.3,
  lamp: 0.5,
  sensor: 0.35,
  sender: 0.35,
  motor: 0.4,
  relay: 0.5,
  sense: 0.4,
  wired: 0.1,
  electric: 0.3,
  common: 0.5,
  "1": 0.35,
  "2": 0.5,
  audio: 0.4,
  // A sign alone, beside a word that nobody knows, is no ground and no feed.
  plus: 0.5,
  minus: 0.5,
};

/** How much an idea says. */
export function weightOf(idea: Idea): number {
  return LIGHT[idea] ?? 1;
}

function compile(owner: string, written: string): Pattern {
  const required: Idea[] = [];
  const optional: Idea[] = [];
  let share = 1;
  for (const word of written.split(/\s+/)) {
    const [, idea, before, at, after] = /^([a-z0-9]+)(\?)?(?:@([\d.]+))?(\?)?$/.exec(word) ?? [];
    if (!idea) throw new Error(`the meaning "${written}" of ${owner} cannot be read`);
    if (at) share = Number(at);
    (before || after ? optional : required).push(idea as Idea);
  }
  return { function: owner, required, optional, share };
}

export const PATTERNS: readonly Pattern[] = FUNCTIONS.flatMap(({ id, meanings }) =>
  meanings.map((written) => compile(id, written)),
);

const byIdea = new Map<Idea, Pattern[]>();
for (const pattern of PATTERNS) {
  // Filed under its weightiest idea: a text without that one cannot fit.
  const key = [...pattern.required].sort((a, b) => weightOf(b) - weightOf(a))[0]!;
  const list = byIdea.get(key) ?? [];
  list.push(pattern);
  byIdea.set(key, list);
}

/** The patterns all of whose required ideas are there. */
export function fitting(ideas: ReadonlySet<Idea>): readonly Pattern[] {
  const found: Pattern[] = [];
  for (const idea of ideas) {
    for (const pattern of byIdea.get(idea) ?? []) {
      if (pattern.required.every((one) => ideas.has(one))) found.push(pattern);
    }
  }
  return found;
}
