/**
 * One thing that is wrong with an input, as data; only the editor and the command line put it into lines.
 * `where` is a path into the file ("wires.w:12.ends[1]"); line and column count from 1 where they are known.
 */
export type Problem = {
  readonly code:
    | "too-large"
    | "too-deep"
    | "not-json"
    | "not-a-harness"
    | "not-a-connector"
    | "not-a-profile"
    | "not-a-profile"
    | "wrong-value"
    | "missing-field"
    | "repeated-key"
    | "forbidden-key"
    | "dangling-end"
    | "dangling-reference"
    | "wrong-id"
    | "too-many";
  readonly where: string;
  readonly line: number | null;
  readonly column: number | null;
  readonly found: string;
  readonly expected: string;
  readonly next: string;
};

/** After this many the rest is not worth reading: the file is something else. */
export const MAX_PROBLEMS = 100;

/** "van.harness.json:41:9: …": one problem in one line, the way a compiler says it. */
export function sayProblem(problem: Problem, file = ""): string {
  const place = problem.line === null ? file : `${file}:${problem.line}:${problem.column}`;
  const where = problem.where ? `${problem.where}: ` : "";
  return `${place ? `${place}: ` : ""}${where}found ${problem.found}; expected ${problem.expected}. → ${problem.next} [${problem.code}]`;
}

/** A value as it may be shown in a message: short, on one line, nothing in it that steers a terminal. */
export function showValue(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return showText(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (value !== null && typeof value === "object") return "an object";
  return String(value);
}

/** Characters that JSON lets stand but that turn, hide or break a line: controls, format marks, separators. */
const UNSHOWABLE = /[\p{Cc}\p{Cf}\u2028\u2029]/gu;

function showText(text: string): string {
  const quoted =
    text.length > 60 ? `${JSON.stringify(text.slice(0, 57)).slice(0, -1)}…"` : JSON.stringify(text);
  return quoted.replace(UNSHOWABLE, "\ufffd");
}

/** ["wires", "w:12", "ends", 1] → "wires.w:12.ends[1]" */
export function sayPath(path: readonly PropertyKey[]): string {
  let text = "";
  for (const step of path) {
    if (typeof step === "number") text += `[${step}]`;
    else if (/^[\w:#-]{1,80}$/.test(String(step))) text += text ? `.${String(step)}` : String(step);
    else text += `[${showValue(String(step))}]`;
  }
  return text;
}
