import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { FUNCTIONS } from "../../../src/catalogue/functions.ts";
import { COLOUR_CODES } from "../../../src/graph/schema/values.ts";

/**
 * How a careful fitter would join two leads: `must` without a word, `may-ask` where the wording is honestly
 * ambiguous (joining is right and so is asking), `may` where leaving it apart is right too.
 */
export type TrueJoin = {
  readonly left: string;
  readonly right: string;
  readonly how: "must" | "may-ask" | "may";
};

/** One lead as a person reads it. Several functions or colours: any of them is right. */
export type TrueRow = {
  /** The cavity label; IEC 60757 letters where the chart has none (`GN#2` is the second such lead); `@12` is line 12. */
  readonly name: string;
  /** Ids of the catalogue; `?` says that not being sure is right, `*` that anything is. */
  readonly functions: readonly string[];
  /** IEC 60757 letters such as `GN/WH`; `-` for none, `*` for a colour that the letters do not cover. */
  readonly colours: readonly string[];
  readonly area_mm2: number | null;
};

export type Pair = {
  readonly name: string;
  readonly about: Readonly<Record<string, string>>;
  readonly leftText: string;
  /** Empty where one paste holds both charts, side by side. */
  readonly rightText: string;
  readonly left: readonly TrueRow[];
  readonly right: readonly TrueRow[];
  readonly joins: readonly TrueJoin[];
};

/** Reads every pair of a folder beside this file. Throws where an answer is not complete: it is data of ours. */
export function loadPairs(folder: "pairs" | "held-out" | "second" | "third" | "fourth"): Pair[] {
  const path = fileURLToPath(new URL(`./${folder}/`, import.meta.url));
  return readdirSync(path)
    .filter((name) => name.endsWith(".txt"))
    .sort()
    .map((name) => parsePair(name.replace(".txt", ""), readFileSync(path + name, "utf8")));
}

const RULE = /^===== (left|right|answer)\n/m;
const HOW = { "=": "must", "?": "may-ask", "~": "may" } as const;
const COLOUR_NAME = /^[A-Z]{2,4}(\/[A-Z]{2,4})?(#\d)?$/;

type Draft = TrueRow & { readonly fate: string };

export function parsePair(name: string, text: string): Pair {
  const [head, left, leftText, right, rightText, answer, answers] = text.split(RULE);
  if (left !== "left" || right !== "right" || answer !== "answer") throw new Error(`${name}: sections`);
  const [, leftLines, rightLines] = answers!.split(/^(?:left|right)\n/m);
  const leftDrafts = leftLines!.split("\n").filter(Boolean).flatMap(draftsOf);
  const rightDrafts = rightLines!.split("\n").filter(Boolean).flatMap(draftsOf);
  const joins = leftDrafts.flatMap(joinsOf);
  const inherit = (draft: Draft): TrueRow => {
    const partners = joins.filter((join) => join.right === draft.name).map((join) => join.left);
    const functions = draft.functions.length
      ? draft.functions
      : (leftDrafts.find((row) => row.name === partners[0])?.functions ?? []);
    return { name: draft.name, functions, colours: draft.colours, area_mm2: draft.area_mm2 };
  };
  const pair = {
    name,
    about: Object.fromEntries(
      head!
        .split("\n")
        .filter(Boolean)
        .map((line) => line.split(/: (.*)/).slice(0, 2)),
    ),
    leftText: leftText!,
    rightText: rightText!,
    left: leftDrafts.map(inherit),
    right: rightDrafts.map(inherit),
    joins,
  };
  holdTogether(pair, leftDrafts, rightDrafts);
  return pair;
}

/** `A4 | constant-feed | YE 1.5 | = YE`, or `RD; BK`, which take their function from the lead they join. */
function draftsOf(line: string): Draft[] {
  if (!line.includes(" | ") && !line.endsWith(" |"))
    return line.split("; ").map((name) => ({
      name,
      functions: [],
      colours: [name.replace(/#\d$/, "")],
      area_mm2: null,
      fate: "",
    }));
  const [name, functions, look, fate] = line.split("|").map((field) => field.trim());
  const [colours, area] = look!.split(" ");
  return [
    {
      name: name!,
      functions: functions!.split(",").filter(Boolean),
      colours: colours!.split(","),
      area_mm2: area === undefined ? null : Number(area),
      fate: fate ?? "",
    },
  ];
}

function joinsOf(draft: Draft): TrueJoin[] {
  if (draft.fate === "cap" || draft.fate === "") return [];
  return draft.fate.split(", ").map((one) => {
    const how = HOW[one[0] as keyof typeof HOW];
    if (!how) throw new Error(`"${draft.fate}" is no answer`);
    return { left: draft.name, right: one.slice(2), how };
  });
}

/** An answer that contradicts itself would measure nothing. */
function holdTogether(pair: Pair, left: readonly Draft[], right: readonly Draft[]): void {
  const say = (why: string): never => {
    throw new Error(`${pair.name}: ${why}`);
  };
  const known = new Set<string>(FUNCTIONS.map((one) => one.id));
  const codes = new Set<string>(COLOUR_CODES);
  for (const [rows, drafts, side] of [
    [pair.left, left, "left"],
    [pair.right, right, "right"],
  ] as const) {
    if (new Set(rows.map((row) => row.name)).size !== rows.length) say(`a ${side} name stands twice`);
    rows.forEach((row, index) => {
      if (row.functions.length === 0) say(`${side} ${row.name} has no function`);
      for (const id of row.functions)
        if (id !== "?" && id !== "*" && !known.has(id))
          say(`${side} ${row.name}: there is no function ${id}`);
      for (const colour of row.colours)
        if (colour !== "-" && colour !== "*" && !colour.split("/").every((code) => codes.has(code)))
          say(`${side} ${row.name}: ${colour} is no colour`);
      const joined = pair.joins.some((join) => join[side] === row.name);
      const unused = row.functions[0] === "not-used";
      if (!joined && !unused && drafts[index]!.fate !== "cap") say(`${side} ${row.name}: joined or capped?`);
      if (joined && (unused || drafts[index]!.fate === "cap"))
        say(`${side} ${row.name} is joined and is not`);
    });
  }
  for (const join of pair.joins) {
    if (!pair.left.some((row) => row.name === join.left)) say(`no left ${join.left}`);
    if (!pair.right.some((row) => row.name === join.right)) say(`no right ${join.right}`);
  }
}

/** A lead of a chart without labels is named by its colour. */
export const isColourName = (row: TrueRow): boolean =>
  COLOUR_NAME.test(row.name) && row.colours.includes(row.name.replace(/#\d$/, ""));
