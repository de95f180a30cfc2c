import { visit } from "jsonc-parser";
import { MAX_PROBLEMS, type Problem } from "./problem.ts";

/** Far deeper than any harness; shallow enough that no reader runs out of stack. */
const MAX_DEPTH = 64;

/**
 * The deepest nesting of brackets outside strings. Runs once over the text with no recursion, so it is safe on
 * any input; it stops at the first place that is too deep.
 * @returns the offset of the bracket that goes too deep, or −1
 */
export function tooDeepAt(text: string): number {
  let depth = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (inString) {
      if (code === 92) i++;
      else if (code === 34) inString = false;
    } else if (code === 34) inString = true;
    else if (code === 123 || code === 91) {
      if (++depth > MAX_DEPTH) return i;
    } else if (code === 125 || code === 93) depth--;
  }
  return -1;
}

export function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  let line = 1;
  let start = 0;
  for (let at = text.indexOf("\n"); at >= 0 && at < offset; at = text.indexOf("\n", at + 1)) {
    line++;
    start = at + 1;
  }
  return { line, column: offset - start + 1 };
}

/**
 * Finds keys that JSON.parse would swallow: one written twice in an object (the first would be lost), and keys
 * that reach into an object's prototype.
 * @param text valid JSON, not too deep
 */
export function findBadKeys(text: string): Problem[] {
  const problems: Problem[] = [];
  const open: Set<string>[] = [];
  const stopped = () => problems.length >= MAX_PROBLEMS;
  visit(text, {
    onObjectBegin: () => {
      open.push(new Set());
      return !stopped();
    },
    onObjectEnd: () => {
      open.pop();
    },
    onObjectProperty: (key, _offset, _length, line, column, path) => {
      if (stopped()) return;
      const keys = open[open.length - 1]!;
      const at = {
        where: sayPath([...path(), key]),
        line: line + 1,
        column: column + 1,
        found: `the key "${key}"`,
      };
      if (key === "__proto__" || key === "constructor" || key === "prototype") {
        problems.push({
          ...at,
          code: "forbidden-key",
          expected: "a key that is not part of JavaScript's own objects",
          next: "Rename or remove it.",
        });
      } else if (keys.has(key)) {
        problems.push({
          ...at,
          code: "repeated-key",
          found: `the key "${key}" a second time`,
          expected: "each key once in an object",
          next: "Give one of the two another id, or remove it.",
        });
      }
      keys.add(key);
    },
  });
  return problems;
}

/** ["wires", "w:12", "ends", 1] → "wires.w:12.ends[1]" */
export function sayPath(path: readonly PropertyKey[]): string {
  let text = "";
  for (const step of path) {
    if (typeof step === "number") text += `[${step}]`;
    else text += text ? `.${String(step)}` : String(step);
  }
  return text;
}
