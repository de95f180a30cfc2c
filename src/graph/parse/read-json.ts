import { type Problem, showValue } from "./problem.ts";
import { findBadKeys, lineAndColumn, syntaxErrorAt, unfitAt } from "./scan.ts";

/** One of our kinds of file, and the words by which its problems are told. */
export type FileKind = {
  /** What stands under "format". */
  readonly format: string;
  readonly notThis: Problem["code"];
  /** "harness file" */
  readonly name: string;
  readonly looks: string;
  readonly ending: string;
  readonly maxCharacters: number;
  /** What makes one too large. */
  readonly whatIsLarge: string;
};

export type ReadJson =
  | { readonly ok: true; readonly raw: Record<string, unknown>; readonly body: string }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The way from a text to an object that may be checked against a schema: size, depth, syntax, format, keys. Never
 * throws; the time is bounded by the text's length.
 * @returns the object and the text that places in it are counted in, or what is wrong
 */
export function readJson(text: string, kind: FileKind): ReadJson {
  // A byte order mark is no character of the file: columns are counted without it, as editors do.
  const body = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  const whole = (problem: Omit<Problem, "where" | "line" | "column">, offset: number | null): ReadJson => {
    const at = offset === null ? { line: null, column: null } : lineAndColumn(body, offset);
    return { ok: false, problems: [{ ...problem, where: "", ...at }] };
  };
  if (body.length > kind.maxCharacters) {
    return whole(
      {
        code: "too-large",
        found: `${Math.round(body.length / 1e6)} million characters`,
        expected: `at most ${kind.maxCharacters / 1e6} million`,
        next: `Check that this is a ${kind.name}; take ${kind.whatIsLarge} out of it.`,
      },
      null,
    );
  }
  const unfit = unfitAt(body);
  if (unfit) {
    return whole(
      {
        code: unfit.code,
        found: unfit.code === "too-deep" ? "brackets nested over 64 deep" : "over 4 million values",
        expected: kind.looks,
        next: `Check that this is a ${kind.name}.`,
      },
      unfit.offset,
    );
  }
  let raw: unknown;
  try {
    raw = JSON.parse(body);
  } catch {
    const empty = !/\S/.test(body);
    const wrong = empty ? null : syntaxErrorAt(body);
    const here = wrong ? body.slice(wrong.offset, wrong.offset + 20) : "";
    return whole(
      {
        code: "not-json",
        found: empty ? "an empty file" : here === "" ? "the end of the file" : showValue(here),
        expected: wrong?.expected ?? "JSON",
        next: "Open the file that Pigtail saved; if it was edited by hand, mend it at this place.",
      },
      wrong?.offset ?? null,
    );
  }
  if (!isObject(raw) || raw.format !== kind.format) {
    return whole(
      {
        code: kind.notThis,
        found: isObject(raw) ? `"format": ${showValue(raw.format)}` : showValue(raw),
        expected: `an object with "format": "${kind.format}"`,
        next: `Choose a file that ends in ${kind.ending}.`,
      },
      0,
    );
  }
  const badKeys = findBadKeys(body);
  return badKeys.length ? { ok: false, problems: badKeys } : { ok: true, raw, body };
}

export function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
