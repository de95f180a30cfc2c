import { readColour, sayColour, writeColour } from "../../catalogue/colours.ts";
import { nameContact, nameContactOf, nameKind } from "../../catalogue/describe.ts";
import { functionOf, type WireFunction } from "../../catalogue/functions.ts";
import { contactsOf } from "../../graph/contacts.ts";
import type { Colour, Harness } from "../../graph/harness.ts";
import type { About } from "../../rules/rule.ts";
import { fold } from "./fold.ts";

export type Hit = {
  readonly key: string;
  /** "X1.A4", "W12". */
  readonly name: string;
  readonly words: string;
  readonly colour: Colour | null;
  readonly about: About;
};

type Ranked = Hit & { readonly rank: number; readonly order: number };

/**
 * Finds parts, contacts and wires by designation, name, function, chart text, colour (letters or words), wire
 * number or label. The nearest come first: the very name, then its beginning, then words, then colours.
 * @param most how many to give back; a reader of a list does not read on for ever
 */
export function findInHarness(harness: Harness, typed: string, most = 100): readonly Hit[] {
  const text = fold(typed).trim();
  if (text === "") return [];
  const colour = readColour(typed);
  const hits: Ranked[] = [];
  const add = (rank: number | null, hit: () => Hit) => {
    if (rank !== null) hits.push({ ...hit(), rank, order: hits.length });
  };
  const synonyms = new Map<string, number | null>();
  const synonymRank = (item: WireFunction): number | null => {
    const known = synonyms.get(item.id);
    if (known !== undefined) return known;
    const rank = rankOf(text, [], item.synonyms);
    synonyms.set(item.id, rank);
    return rank;
  };
  for (const part of Object.values(harness.parts)) {
    const kind = nameKind(part.kind);
    add(rankOf(text, [part.designation], [part.name, kind, part.note]), () => ({
      key: part.id,
      name: part.designation,
      words: part.name ? `${kind}, ${part.name}` : kind,
      colour: null,
      about: { part: part.id },
    }));
    if (part.kind !== "connector" && part.kind !== "module") continue;
    for (const contact of contactsOf(part)) {
      const { cavity } = contact;
      const name = nameContactOf(part, contact, contact.number);
      const known = functionOf(contact.function);
      const words = contact.function === "unknown" ? (cavity?.text ?? "") : known.name;
      const lead = cavity?.lead?.colour ?? null;
      const rank = best(rankOf(text, [name], [words, cavity?.text ?? ""]), synonymRank(known));
      add(best(rank, colourRank(lead, colour, text)), () => ({
        key: `${part.id}#${contact.number}`,
        name,
        words: words || "function not known",
        colour: lead,
        about: { part: part.id, contact: contact.number },
      }));
    }
  }
  for (const wire of Object.values(harness.wires)) {
    const rank = rankOf(text, [wire.designation, wire.label], [wire.note]);
    add(best(rank, colourRank(wire.colour, colour, text)), () => {
      const [from, to] = wire.ends.map((end) => (end === "loose" ? "loose" : nameContact(harness, end)));
      return {
        key: wire.id,
        name: wire.designation,
        words: `${from} to ${to}, ${sayColour(wire.colour)}`,
        colour: wire.colour,
        about: { wire: wire.id },
      };
    });
  }
  hits.sort((a, b) => a.rank - b.rank || a.order - b.order);
  return hits.slice(0, most).map(({ rank: _rank, order: _order, ...hit }) => hit);
}

/** 0: the very name; 1: its beginning; 2: begins a word of the texts; 3: stands in one; `null`: nowhere. */
function rankOf(text: string, names: readonly string[], texts: readonly string[]): number | null {
  let rank: number | null = null;
  for (const name of names) {
    const folded = fold(name);
    if (folded === text) return 0;
    if (folded.startsWith(text)) rank = 1;
  }
  if (rank !== null) return rank;
  for (const item of texts) {
    if (item === "") continue;
    const line = fold(item);
    if (line.startsWith(text) || line.includes(` ${text}`)) return 2;
    if (text.length > 2 && line.includes(text)) rank = 3;
  }
  return rank;
}

function colourRank(colour: Colour | null, asked: Colour | null, text: string): number | null {
  if (!colour || !asked) return null;
  if (writeColour(colour) === writeColour(asked)) return 1;
  if (asked.tracer === null && (colour.base === asked.base || colour.tracer === asked.base)) {
    return text.length > 1 ? 2 : null;
  }
  return null;
}

function best(a: number | null, b: number | null): number | null {
  if (a === null) return b;
  return b === null ? a : Math.min(a, b);
}
