import { describe, expect, test } from "vitest";
import { oneChart, told } from "./told.ts";

// Charts of our own invention (common practice, no source).

describe("a lead whose colour IEC 60757 has no letters for is a lead", () => {
  test.each([
    ["dots", (colour: string, words: string) => `${colour}........${words}`],
    ["dots, colour last", (colour: string, words: string) => `${words} ........ ${colour}`],
    ["dash", (colour: string, words: string) => `${colour} - ${words}`],
    ["brackets", (colour: string, words: string) => `${words} (${colour})`],
    ["tab", (colour: string, words: string) => `${colour}\t${words}`],
  ])("%s", (_name, write) => {
    const rows = [
      ["tan", "coolant temperature"],
      ["red", "battery"],
      ["black", "ground"],
      ["tan/white", "horn"],
      ["bare", "microphone shield"],
      ["maroon", "reverse"],
    ];
    const { leads } = oneChart(rows.map(([colour, words]) => write(colour!, words!)).join("\n"));
    expect(leads.map(({ colourText }) => colourText)).toEqual(rows.map(([colour]) => colour));
    expect(leads.map(({ colour }) => colour?.base ?? "")).toEqual(["", "RD", "BK", "", "", ""]);
    expect(leads.map(({ text }) => text)).toEqual(rows.map(([, words]) => words));
  });

  test("a known tracer is no base of an unknown colour", () => {
    const { leads } = oneChart("mustard/white - left indicator\nred - battery\nblack - ground\nwhite - horn");
    expect(leads[0]).toMatchObject({ colour: null, colourText: "mustard/white", text: "left indicator" });
  });

  test("chocolate is brown", () => {
    const { leads } = oneChart("chocolate..left indicator\nchoc/white..right indicator\nblack..ground");
    expect(leads.map(({ colour }) => colour)).toEqual([
      { base: "BN", tracer: null },
      { base: "BN", tracer: "WH" },
      { base: "BK", tracer: null },
    ]);
  });
});

test("an amp that is turned on is no figure", () => {
  expect(
    oneChart("8 amp remote +12V out (blue/white)\n9 dimmer in (orange)\n10 ground, 10 amp (black)").leads.map(
      told,
    ),
  ).toEqual(["8 amplifier-turn-on BU/WH gives", "9 illumination OG takes", "10 ground BK 10A"]);
});

test("a sign before dots is a polarity", () => {
  const { leads } = oneChart(
    "(a) earth ........ black\n(b) batt + ........ red\n(c) mic + ........ white\n(d) mic - ........ blue\n(e) mic screen ........ bare",
  );
  expect(leads.map(({ name }) => name)).toEqual(["a", "b", "c", "d", "e"]);
  expect(leads.map(({ text }) => text)).toEqual(["earth", "batt +", "mic +", "mic -", "mic screen"]);
  expect(leads[4]).toMatchObject({ colour: null, colourText: "bare" });
});
