import { describe, expect, test } from "vitest";
import { functionOf } from "../../../src/catalogue/functions.ts";
import { readFunction } from "../../../src/match/words/read-function.ts";
import { DUTCH_OPEN, DUTCH_SURE } from "./wordings/dutch.ts";
import { FRENCH_OPEN, FRENCH_SURE } from "./wordings/french.ts";
import { GERMAN_OPEN, GERMAN_SURE } from "./wordings/german.ts";
import { ITALIAN_OPEN, ITALIAN_SURE } from "./wordings/italian.ts";
import { POLISH_OPEN, POLISH_SURE } from "./wordings/polish.ts";
import { SPANISH_OPEN, SPANISH_SURE } from "./wordings/spanish.ts";

type Wording = { readonly id: string; readonly text: string };

/** "ground: Masse | Minus", line by line. */
function wordingsOf(table: string): readonly Wording[] {
  return table
    .trim()
    .split("\n")
    .flatMap((line) => {
      const [id = "", texts = ""] = line.split(/: (.*)/);
      return texts.split(" | ").map((text) => ({ id, text }));
    });
}

/** As "id: text" where it is not read as that function and nothing else. */
function misread(wordings: readonly Wording[], write: (text: string) => string = (text) => text): string[] {
  return wordings.flatMap(({ id, text }) => {
    const { candidates, certain } = readFunction(write(text));
    if (certain && candidates[0]?.function === id) return [];
    return [`${id}: ${write(text)} → ${candidates[0]?.function}${certain ? "" : ", not certain"}`];
  });
}

const plain = (text: string) => text.normalize("NFKD").replace(/\p{M}/gu, "").replace(/ł/g, "l");
const digraphs = (text: string) =>
  text.replace(/[äöüÄÖÜ]/g, (letter) => `${plain(letter)}e`).replace(/ß/g, "ss");

const LANGUAGES = [
  ["German", GERMAN_SURE, GERMAN_OPEN],
  ["Dutch", DUTCH_SURE, DUTCH_OPEN],
  ["Polish", POLISH_SURE, POLISH_OPEN],
  ["French", FRENCH_SURE, FRENCH_OPEN],
  ["Spanish", SPANISH_SURE, SPANISH_OPEN],
  ["Italian", ITALIAN_SURE, ITALIAN_OPEN],
] as const;

describe.each(LANGUAGES)("%s", (_language, sure, open) => {
  const wordings = wordingsOf(sure);

  test("every wording names a function, and there are enough to mean something", () => {
    for (const { id } of [...wordings, ...wordingsOf(open)]) expect(functionOf(id).id).toBe(id);
    expect(wordings.length).toBeGreaterThanOrEqual(100);
  });

  test("a clear wording is read as its function, for certain", () => expect(misread(wordings)).toEqual([]));

  test("and in capitals", () => expect(misread(wordings, (text) => text.toUpperCase())).toEqual([]));

  test("and without accents", () => expect(misread(wordings, plain)).toEqual([]));

  test("a wording of several meanings carries them and is not certain", () => {
    for (const { id, text } of wordingsOf(open)) {
      const { candidates, certain } = readFunction(text);
      expect(
        candidates.map((one) => one.function),
        text,
      ).toContain(id);
      expect(certain, text).toBe(false);
    }
  });
});

test("German umlauts may be written with an e, and ß as ss", () => {
  const wordings = wordingsOf(GERMAN_SURE).filter(({ text }) => digraphs(text) !== text);
  expect(wordings.length).toBeGreaterThanOrEqual(25);
  expect(misread(wordings, digraphs)).toEqual([]);
});
