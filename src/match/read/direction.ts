import type { Direction } from "../../graph/harness.ts";
import { fold, squeeze } from "./fold.ts";

/** Words of charts for the way a signal goes, seen from the chart's own side (common practice, no source). */
const GIVES = "output|ausgang|sortie|salida|uscita|uitgang|wyjscie";
const TAKES = "input|eingang|entree|entrada|ingresso|ingang|wejscie";
const ANYWHERE_GIVES = new RegExp(`(?<![\\w-])(?:${GIVES}|outputs)(?!\\w)`);
const ANYWHERE_TAKES = new RegExp(`(?<![\\w-])(?:${TAKES}|inputs)(?!\\w)`);
/** German and Dutch write it onto the word: "Signaleingang". */
const COMPOUND_GIVES = /\w(?:ausgang|uitgang)(?!\w)/;
const COMPOUND_TAKES = /\w(?:eingang|ingang)(?!\w)/;
const BOTH =
  /(?<!\w)(?:i\/o|in\/out|input\/output|e\/a|e\/s|bidirectional|bidirektional|bidirectionnel)(?!\w)/;
/** Short words count only where they close the wording or stand in brackets: elsewhere they are prepositions. */
const CLOSING_OUT = /(?:\( ?out ?\)|\[ ?out ?\]|(?<=\S )out)$|^out ?[:)]/;
const CLOSING_IN = /(?:\( ?in ?\)|\[ ?in ?\]|(?<=\S )in)$|^in ?[:)]/;

const ONLY = new RegExp(`^(?:${GIVES}|${TAKES}|bidirectional|bidirektional)$`);
const LONGEST = 400;

/** What a wording says of the way: "reverse signal input", "12V out"; `unknown` where it does not. */
export function findDirection(text: string): Direction {
  if (text.length > LONGEST) return "unknown";
  const plain = squeeze(fold(text));
  if (BOTH.test(plain)) return "both";
  const gives = ANYWHERE_GIVES.test(plain) || COMPOUND_GIVES.test(plain) || CLOSING_OUT.test(plain);
  const takes = ANYWHERE_TAKES.test(plain) || COMPOUND_TAKES.test(plain) || CLOSING_IN.test(plain);
  if (gives === takes) return "unknown";
  return gives ? "gives" : "takes";
}

const CELLS: Readonly<Record<string, Direction>> = {
  i: "takes",
  in: "takes",
  "->": "takes",
  ">": "takes",
  "→": "takes",
  "⇒": "takes",
  o: "gives",
  out: "gives",
  aus: "gives",
  ein: "takes",
  uit: "gives",
  sal: "gives",
  ent: "takes",
  we: "takes",
  wy: "gives",
  "<-": "gives",
  "<": "gives",
  "←": "gives",
  "⇐": "gives",
  "i/o": "both",
  io: "both",
  "in/out": "both",
  "e/a": "both",
  "e/s": "both",
  "we/wy": "both",
  bi: "both",
  both: "both",
  "<->": "both",
  "↔": "both",
  beide: "both",
  "-": "none",
};

/**
 * Reads the cells of a direction column together: "A" gives in German ("Ausgang"), "E" takes there and "S" gives in
 * French. An arrow is read as into the unit that the chart is of where it points right.
 */
export function directionCells(cells: readonly string[]): readonly Direction[] {
  const plain = cells.map((cell) => squeeze(fold(cell)).replace(/[.]$/, ""));
  const has = (word: string) => plain.includes(word);
  const letters: Record<string, Direction> = {};
  if (has("e") || has("a")) Object.assign(letters, { e: "takes", a: "gives" });
  if (has("s")) Object.assign(letters, { e: "takes", s: "gives" });
  if (has("u") && !has("o")) Object.assign(letters, { i: "takes", u: "gives" });
  return plain.map((cell) => {
    const known = letters[cell] ?? (Object.hasOwn(CELLS, cell) ? CELLS[cell] : undefined);
    return known ?? (cell === "" ? "unknown" : findDirection(cell));
  });
}

/** True where a cell says a way and nothing else. */
export function isDirectionCell(text: string): boolean {
  if (text.length > 24) return false;
  const plain = squeeze(fold(text));
  return plain !== "-" && (Object.hasOwn(CELLS, plain) || ONLY.test(plain));
}
