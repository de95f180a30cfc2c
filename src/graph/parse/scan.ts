import { type ParseErrorCode, printParseErrorCode, visit } from "jsonc-parser";
import { MAX_PROBLEMS, type Problem, sayPath, showValue } from "./problem.ts";

/** Far deeper than any harness; shallow enough that no reader runs out of stack. */
const MAX_DEPTH = 64;
/** A harness of 10 000 wires, laid out, has well under a million; what has more only costs time and memory. */
const MAX_VALUES = 4_000_000;

/**
 * What makes a text unfit to be read at all: brackets nested too deep, or too many values. Both are counted
 * outside strings, in one pass with no recursion, so it is safe on any input.
 * @returns the first such thing and the offset where it shows, or `null`
 */
export function unfitAt(
  text: string,
): { readonly code: "too-deep" | "too-many"; readonly offset: number } | null {
  let depth = 0;
  let values = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (inString) {
      if (code === 92) i++;
      else if (code === 34) inString = false;
    } else if (code === 34) inString = true;
    else if (code === 123 || code === 91) {
      values++;
      if (++depth > MAX_DEPTH) return { code: "too-deep", offset: i };
    } else if (code === 125 || code === 93) depth--;
    else if (code === 44 && ++values > MAX_VALUES) return { code: "too-many", offset: i };
  }
  return null;
}

export type LineAndColumn = { readonly line: number; readonly column: number };

/** Where offsets stand, in the order given, found in one pass however many they are. Both count from 1. */
export function linesAndColumns(text: string, offsets: readonly number[]): LineAndColumn[] {
  const order = offsets.map((_, index) => index).sort((a, b) => offsets[a]! - offsets[b]!);
  const found = new Array<LineAndColumn>(offsets.length);
  let line = 1;
  let start = 0;
  let at = 0;
  for (const index of order) {
    const offset = offsets[index]!;
    for (; at < offset; at++) {
      if (text.charCodeAt(at) !== 10) continue;
      line++;
      start = at + 1;
    }
    found[index] = { line, column: offset - start + 1 };
  }
  return found;
}

export function lineAndColumn(text: string, offset: number): LineAndColumn {
  return linesAndColumns(text, [offset])[0]!;
}

const EXPECTED: Readonly<Record<string, string>> = {
  InvalidSymbol: "text in double quotes, a number, true, false, null, { or [",
  PropertyNameExpected: "a name in double quotes",
  ValueExpected: "a value",
  ColonExpected: "a colon",
  CommaExpected: "a comma or the closing bracket",
  CloseBraceExpected: "a closing }",
  CloseBracketExpected: "a closing ]",
  EndOfFileExpected: "the end of the file",
  InvalidCommentToken: "no comment: JSON has none",
  UnexpectedEndOfString: "a closing double quote on the same line",
  UnexpectedEndOfNumber: "digits",
  InvalidNumberFormat: "a number as JSON writes it",
  InvalidEscapeCharacter: 'one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u',
  InvalidUnicode: "four hexadecimal digits",
  InvalidCharacter: "a control character to be written as \\u and its number",
};

class Stop extends Error {}

/**
 * The first place where a text stops being JSON. One pass that ends there; engines do not all tell the place.
 * @param text fit to be read (`unfitAt`)
 * @returns its offset and what would have to stand there; `null` where the text is JSON after all
 */
export function syntaxErrorAt(text: string): { readonly offset: number; readonly expected: string } | null {
  let first: { offset: number; expected: string } | null = null;
  try {
    visit(
      text,
      {
        onError: (code: ParseErrorCode, offset: number) => {
          first = { offset, expected: EXPECTED[printParseErrorCode(code)] ?? "JSON" };
          throw new Stop();
        },
      },
      { disallowComments: true, allowTrailingComma: false },
    );
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
  }
  return first;
}

/**
 * Finds keys that JSON.parse would swallow: one written twice in an object (the first would be lost), and keys
 * that reach into an object's prototype.
 * @param text valid JSON that is fit to be read (`unfitAt`)
 */
export function findBadKeys(text: string): Problem[] {
  const problems: Problem[] = [];
  const open: Set<string>[] = [];
  const say = (key: string, line: number, column: number, path: () => PropertyKey[]) => ({
    where: sayPath([...path(), key]),
    line: line + 1,
    column: column + 1,
  });
  try {
    visit(text, {
      onObjectBegin: () => {
        open.push(new Set());
      },
      onObjectEnd: () => {
        open.pop();
      },
      onObjectProperty: (key, _offset, _length, line, column, path) => {
        const keys = open[open.length - 1]!;
        if (key === "__proto__" || key === "constructor" || key === "prototype") {
          problems.push({
            ...say(key, line, column, path),
            code: "forbidden-key",
            found: `the key ${showValue(key)}`,
            expected: "a key that is not part of JavaScript's own objects",
            next: "Rename or remove it.",
          });
        } else if (keys.has(key)) {
          problems.push({
            ...say(key, line, column, path),
            code: "repeated-key",
            found: `the key ${showValue(key)} a second time`,
            expected: "each key once in an object",
            next: "Give one of the two another id, or remove it.",
          });
        }
        if (problems.length >= MAX_PROBLEMS) throw new Stop();
        keys.add(key);
      },
    });
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
  }
  return problems;
}
