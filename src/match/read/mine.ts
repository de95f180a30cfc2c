import type { Direction } from "../../graph/harness.ts";
import { isColourless } from "./colourless.ts";
import { findDirection } from "./direction.ts";
import { bareSize_mm2, type Found, findCurrent, findFuse, findSize } from "./figures.ts";
import { fold, squeeze } from "./fold.ts";
import { readHead } from "./heads.ts";
import type { Labeller } from "./label.ts";
import { colourSpanOf, coloursOf, functionReading } from "./words.ts";

/** What a wording gave up, and what was left of it. */
export type Mined = {
  readonly label: string | null;
  readonly colourText: string;
  readonly area_mm2: number | null;
  readonly current_A: number | null;
  readonly fuse_A: number | null;
  readonly direction: Direction;
  /** What it is for: the chart's words without the above. */
  readonly text: string;
};

/** Stands where something was taken out; no text holds it (a noncharacter of Unicode). */
const TAKEN = "\ufdd0";
/** Nothing of a chart is longer, and prose is not searched for wires. */
const LONGEST_WORDING = 400;

/**
 * Takes apart a wording that may hold anything: "A4: +12V constant (yellow) 10A".
 * @param labeller finds the label, where this wording may hold it
 * @param colour whether the colour may stand in it
 */
export function mine(
  text: string,
  labeller: Labeller | null,
  colour: boolean,
  place: Place | null = null,
): Mined {
  // Dots lead the eye from one column to the next, and part cells as other separators do.
  let rest = text.replaceAll(TAKEN, " ").replace(/\s*(?:\.{3,}|(?:\s\.){3,}|…)\s*/g, TAKEN);
  let label: string | null = null;
  let colourText = "";
  if (rest.length > LONGEST_WORDING)
    return {
      label,
      colourText,
      area_mm2: null,
      current_A: null,
      fuse_A: null,
      direction: "unknown",
      text: squeeze(rest),
    };
  const labelled = labeller?.(rest);
  if (labelled) {
    label = labelled.label;
    rest = `${TAKEN}${labelled.rest}`;
  }
  const take = (start: number, end: number) => {
    rest = rest.slice(0, start) + TAKEN + rest.slice(end);
  };
  const fuse = findFuse(rest);
  if (fuse) take(fuse.start, fuse.end);
  let size = findSize(rest);
  if (size) take(size.start, size.end);
  if (colour) {
    const span = findColour(rest) ?? (place ? placedColour(rest, place) : null);
    if (span) {
      colourText = squeeze(rest.slice(span.start, span.end).replaceAll(TAKEN, " "));
      const [start, end] = withWireWords(rest, span.start, span.end);
      const bare = size ? null : sizeBeside(rest, start, end);
      if (bare) size = bare;
      take(bare?.start ?? start, bare?.end ?? end);
    }
  }
  const current = findCurrent(rest);
  const beforeCurrent = rest;
  if (current) take(current.start, current.end);
  let words = tidy(rest);
  // A wording that is nothing but "15A" or "30a" is a terminal of DIN 72552 as likely: it stays to be read.
  const isTerminal =
    current !== null &&
    words === "" &&
    /^[\s:=-]*(?:15|30|31|49|5\d)\s?a$/i.test(beforeCurrent.replaceAll(TAKEN, ""));
  if (isTerminal) words = tidy(beforeCurrent);
  return {
    label,
    colourText,
    area_mm2: size?.value ?? null,
    current_A: isTerminal ? null : (current?.value ?? null),
    fuse_A: fuse?.value ?? null,
    direction: findDirection(words),
    text: words,
  };
}

/** Where the lines of a chart have their colours, next to the label or last: letters are read only where they stand so. */
export type Place = "first" | "last";

const LETTERS = "[a-z]{1,4}(?:\\s?[-/.]\\s?[a-z]{1,4})?|\\p{L}{5,12}";
const FIRST = new RegExp(`^[\\s\\ufdd0,;:|=.(–-]*(${LETTERS})(?=[\\s,;:|=)\\ufdd0])`, "iu");
const LAST = new RegExp(`(?<=[\\s,;:|=(\\ufdd0])(${LETTERS})[\\s)\\ufdd0]*$`, "iu");

/** The word that stands in the place of the colour, if it is as short as letters of colours are, or is one. */
export function placedColour(text: string, place: Place): Span | null {
  const match = (place === "first" ? FIRST : LAST).exec(text);
  if (!match) return null;
  const word = match[1]!;
  const start = match.index + match[0].indexOf(word);
  if (/^\p{L}{5,}$/u.test(word) && !coloursOf([word])[0]) return null;
  return { start, end: start + word.length };
}

type Span = { readonly start: number; readonly end: number };

/**
 * Where the colour stands. One that has brackets or a stretch between separators to itself is the wire's; another
 * may be a lamp's ("white LED").
 */
function findColour(text: string): Span | null {
  const any = withUnknownBase(text, colourSpanOf(text));
  const pieces = /[^\ufdd0()[\]{},;|:=\t]+?(?=\s+[-–—]\s|\s{2,}|[\ufdd0()[\]{},;|:=\t]|$)/g;
  let best: Span | null = null;
  for (const piece of text.matchAll(pieces)) {
    const lead = /^[\s–—-]*/.exec(piece[0])![0].length;
    const start = piece.index + lead;
    const words = piece[0].slice(lead).trimEnd();
    if (words.length < 2 || words.length > 40) continue;
    if (!any && isColourless(words)) return { start, end: start + words.length };
    const span = any && colourSpanOf(words);
    if (!span || !isOnlyColour(words, span)) continue;
    if (!best || span.end - span.start > best.end - best.start)
      best = { start: start + span.start, end: start + span.end };
  }
  if (!best || !any) return any;
  return any.start <= best.start && any.end >= best.end ? any : best;
}

/** "mustard/white": white is the tracer of a colour that nobody knows, and no base. */
function withUnknownBase(text: string, span: Span | null): Span | null {
  const before = span && /(?<![\p{L}\d/])(\p{L}{3,12})\/$/u.exec(text.slice(0, span.start));
  if (!span || !before || functionReading(before[1]!).candidates.length > 0) return span;
  return { start: before.index, end: span.end };
}

const WIRE_AFTER =
  /^\s*(?:wires?|leads?|cables?|conductor|stripe|ader|leitung|kabel|litze|draad|fil|cable|hilo|filo|przewod)(?![\w-])/;
const COLOUR_BEFORE =
  /(?:(?:wire |lead )?colou?r|farbe|couleur|kleur|kolor|colore|(?:wire|lead|fil|cable|hilo|filo|draad|ader|kabel|przewod)(?=\s*[:=]))\s*[:=]?\s*$/;

function isOnlyColour(words: string, span: Span): boolean {
  const before = fold(words.slice(0, span.start)).trim();
  const after = fold(words.slice(span.end)).trim();
  return (before === "" || COLOUR_BEFORE.test(before)) && (after === "" || WIRE_AFTER.test(after));
}

/** "rot 16", "(red 2,5)", "0.8 DK GRN": a size beside the colour, its unit left out. */
function sizeBeside(text: string, start: number, end: number): Found | null {
  const after =
    /^[\s,/]+(\d{1,2}[.,]\d{1,2})(?=[\s,;)\]\ufdd0]|$)/.exec(text.slice(end)) ??
    /^[\s,/]+(\d{1,2})(?=\s*(?:[)\]]|$))/.exec(text.slice(end));
  const behind = after ? bareSize_mm2(after[1]!) : null;
  if (after && behind !== null) return { value: behind, start, end: end + after[0].length };
  const before =
    /(?<=^|[\s(,;\ufdd0])#?(\d{1,2}[.,]\d{1,2})[\s,/-]+$/.exec(text.slice(0, start)) ??
    /(?<=^|[\s(,;\ufdd0])#?(\d{1,2})[\s,/]+$/.exec(text.slice(0, start));
  const ahead = before ? bareSize_mm2(before[1]!) : null;
  return before && ahead !== null ? { value: ahead, start: before.index, end } : null;
}

/** "yellow wire", "colour: yellow": the words that only say that it is one go with it. */
function withWireWords(text: string, start: number, end: number): readonly [number, number] {
  const plain = fold(text);
  const after = WIRE_AFTER.exec(plain.slice(end));
  const before = COLOUR_BEFORE.exec(plain.slice(0, start));
  return [before ? before.index : start, after ? end + after[0].length : end];
}

/** Takes away the separators that stood between what was taken out and what is left, but no polarity. */
function tidy(text: string): string {
  let rest = text
    .replace(/\s+/g, " ")
    .replace(/[([{](?: *|[ ,;:/-]*\ufdd0[ \ufdd0,;:/-]*)[)\]}]/g, TAKEN)
    .replace(/([([{])[\s\ufdd0,;:/]+/g, "$1")
    .replace(/[\s\ufdd0,;:/]+([)\]}])/g, "$1")
    .replace(/[\ufdd0 ]*\ufdd0[\ufdd0 ]*/g, TAKEN);
  // Behind what was taken a dash separates when a blank follows: "4 - Battery"; "4 -12V" is a minus.
  rest = rest.replace(/\ufdd0(?:(?:[,;:|=/–—→>)\].]+|-+>?(?= |\ufdd0|$))[ \ufdd0]*)+/g, TAKEN);
  rest = rest.replace(/(?:[ ,;:|=/–—→]|(?<=[^\s\d])\.)+\ufdd0/g, TAKEN);
  rest = rest.replace(/^\ufdd0+/, "");
  const dash = / -+\ufdd0/.exec(rest);
  if (dash && !isPolarity(rest.slice(0, dash.index)))
    rest = rest.slice(0, dash.index) + rest.slice(dash.index + dash[0].length - 1);
  const words = squeeze(rest.replaceAll(TAKEN, " ")).replace(/^(?:is|ist|est)\s+(?=\S)/i, "");
  const key = /^(\p{L}{3,16})\s*[:=]\s*(?=\S)/u.exec(words);
  const said = key && readHead(key[1]!) === "function" ? words.slice(key[0].length) : words;
  return said.replace(/^[,;:|–—→]+\s*|\s*[,;:|=–—→]+$/g, "");
}

/** "LF spk -" then a colour: the dash is a minus where the words without it leave the polarity open. */
function isPolarity(before: string): boolean {
  const words = squeeze(before.replaceAll(TAKEN, " "));
  const without = functionReading(words);
  const read = functionReading(`${words} -`);
  return !without.certain && read.candidates.length > 0 && read.certain;
}
