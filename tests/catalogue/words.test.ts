import { describe, expect, test } from "vitest";
import { COLOUR_LANGUAGES } from "../../src/catalogue/colour-words.ts";
import { DUTCH } from "../../src/catalogue/words/dutch.ts";
import { ENGLISH, type Words } from "../../src/catalogue/words/english.ts";
import { FRENCH } from "../../src/catalogue/words/french.ts";
import { GERMAN } from "../../src/catalogue/words/german.ts";
import { ITALIAN } from "../../src/catalogue/words/italian.ts";
import { LANGUAGES } from "../../src/catalogue/words/languages.ts";
import { phrasesByMeaning } from "../../src/catalogue/words/phrases.ts";
import { POLISH } from "../../src/catalogue/words/polish.ts";
import { SPANISH } from "../../src/catalogue/words/spanish.ts";
import { LONGEST_PHRASE } from "../../src/match/words/lexicon.ts";
import { plainWords } from "../../src/match/words/plain-words.ts";
import { isStopWord } from "../../src/match/words/tokens.ts";

type Entry = { readonly language: string; readonly ideas: string; readonly word: string };

const NAMED: readonly (readonly [string, Words])[] = [
  ["German", GERMAN],
  ["Dutch", DUTCH],
  ["Polish", POLISH],
  ["French", FRENCH],
  ["Spanish", SPANISH],
  ["Italian", ITALIAN],
];

function entriesOf(language: string, words: Words): Entry[] {
  const single = Object.entries(words.ideas).flatMap(([ideas, list]) =>
    list.split(",").map((word) => ({ language, ideas, word: word.trim() })),
  );
  const phrases = Object.entries(words.phrases).map(([word, ideas]) => ({ language, ideas, word }));
  return [...single, ...phrases];
}

const ALL = NAMED.flatMap(([language, words]) => entriesOf(language, words));
const STEMS = ALL.filter(({ word }) => word.endsWith("*"));
const show = ({ language, ideas, word }: Entry) => `${language} ${ideas}: ${word}`;

/** Words of colours with all their endings. */
const COLOURS = new Set(
  Object.values(COLOUR_LANGUAGES).flatMap(({ words, endings }) =>
    Object.values(words)
      .flatMap((list) => list.split(" "))
      .flatMap((stem) =>
        stem.endsWith("-") ? endings.split(" ").map((end) => stem.slice(0, -1) + end) : [stem],
      ),
  ),
);
/** A window pane in Spanish charts far more often than the colour of clear glass. */
COLOURS.delete("cristal");

describe.each(NAMED)("%s", (language, words) => {
  const entries = entriesOf(language, words);

  test("is read", () => expect(LANGUAGES).toContain(words));

  test("has words for the ideas that nearly every chart needs", () => {
    for (const idea of [
      "constant switched ignition accessory feed battery ground plus minus front rear left right speaker lamp",
      "illumination dimmer antenna amplifier turnon mute handbrake reverse speed mic camera steering key stop",
      "brake indicator tail position plate fog trailer charge relay switch sensor fuel oil temperature pump",
      "horn wiper washer door window lock unlock heater fan seat mirror alarm signal output input notused",
    ].flatMap((line) => line.split(" ")))
      expect(
        words.ideas[idea as keyof typeof ENGLISH] ?? Object.values(words.phrases).join(" "),
        idea,
      ).toMatch(words.ideas[idea as keyof typeof ENGLISH] ? /./ : new RegExp(`\\b${idea}\\b`));
  });

  test("every entry is in the plain form in which words are compared, and none is empty", () => {
    const bad = entries.filter(({ word }) => word === "" || word !== plainWords(word) || /\s{2}/.test(word));
    expect(bad.map(show)).toEqual([]);
  });

  test("no entry stands twice for one meaning", () => {
    const seen = new Set<string>();
    const twice = entries.filter((entry) => seen.has(show(entry)) || !seen.add(show(entry)));
    expect(twice.map(show)).toEqual([]);
  });

  test("phrases are made of ideas", () => {
    for (const [phrase, ideas] of Object.entries(words.phrases))
      for (const idea of ideas.split(" ")) expect(Object.keys(ENGLISH), phrase).toContain(idea);
  });

  test("no phrase is longer than the reader looks, and no word is one that it leaves out", () => {
    const lost = entries.filter(({ word }) => word.split(" ").length > LONGEST_PHRASE || isStopWord(word));
    expect(lost.map(show)).toEqual([]);
  });

  test("no word is a colour's", () => {
    const colours = entries.filter(({ word }) => COLOURS.has(word));
    expect(colours.map(show)).toEqual([]);
  });
});

describe("stems", () => {
  test("are long enough to be found, and stand alone", () => {
    const bad = ALL.filter(({ word }) => word.includes("*") && !/^[a-z-]{4,}\*$/.test(word));
    expect(bad.map(show)).toEqual([]);
  });

  test("swallow no word of another language, nor a compound that begins with one", () => {
    const english = Object.entries(ENGLISH).flatMap(([ideas, list]) =>
      list.split(",").map((word) => ({ language: "English", ideas, word: word.trim() })),
    );
    const swallowed = STEMS.flatMap((stem) =>
      [...ALL, ...english]
        .filter(({ language, word }) => language !== stem.language && !/[* ]/.test(word))
        .filter(({ word }) => word.startsWith(stem.word.slice(0, -1)))
        .map((entry) => `${show(stem)} swallows ${show(entry)}`),
    );
    expect(swallowed).toEqual([]);
  });
});

test("a phrase with two meanings is refused", () => {
  expect(phrasesByMeaning({ "front left": "vl, lvo", front: "vo" })).toEqual({
    vl: "front left",
    lvo: "front left",
    vo: "front",
  });
  expect(() => phrasesByMeaning({ front: "vl", rear: "hl, vl" })).toThrow(/"vl" has two meanings/);
});
