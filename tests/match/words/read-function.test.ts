import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FUNCTIONS, functionOf } from "../../../src/catalogue/functions.ts";
import { ENGLISH } from "../../../src/catalogue/words/english.ts";
import { ENGLISH_PHRASES } from "../../../src/catalogue/words/english-phrases.ts";
import { readFunction } from "../../../src/match/words/read-function.ts";

const SURE: readonly (readonly [string, string])[] = [
  ["battery", "constant-feed"],
  ["+12V constant", "constant-feed"],
  ["Constant Power (Battery)", "constant-feed"],
  ["memory 12 volt", "constant-feed"],
  ["hot at all times", "constant-feed"],
  ["unswitched supply", "constant-feed"],
  ["ACC", "switched-feed"],
  ["ignition switched 12V", "switched-feed"],
  ["IGN/ACC", "switched-feed"],
  ["ignition run", "ignition-feed"],
  ["Kl. 30", "constant-feed"],
  ["30", "constant-feed"],
  ["+15", "ignition-feed"],
  ["terminal 58d", "illumination"],
  ["GND", "ground"],
  ["chassis earth", "ground"],
  ["B-", "ground"],
  ["illum.", "illumination"],
  ["dash lights", "illumination"],
  ["amp remote turn-on", "amplifier-turn-on"],
  ["P. ANT", "antenna-power"],
  ["aerial motor +12V", "antenna-power"],
  ["LF spk -", "speaker-front-left-minus"],
  ["FL+", "speaker-front-left-plus"],
  ["Front left speaker (-)", "speaker-front-left-minus"],
  ["Spk RR pos", "speaker-rear-right-plus"],
  ["RH rear neg", "speaker-rear-right-minus"],
  ["R/F +", "speaker-front-right-plus"],
  ["left turn signal", "indicator-left"],
  ["turn L", "indicator-left"],
  ["back-up light", "reverse"],
  ["reverse gear signal", "reverse"],
  ["brake light switch", "stop-lamp"],
  ["left stop/turn", "stop-turn-left"],
  ["running lights", "tail-lamps"],
  ["LH tail", "tail-left"],
  ["number plate lamp", "plate-lamp"],
  ["high beam", "main-beam"],
  ["handbrake switch", "parking-brake"],
  ["CANH", "can-high"],
  ["CAN Lo", "can-low"],
  ["K-line", "k-line"],
  ["composite video", "video-signal"],
  ["camera power 12 V", "camera-power"],
  ["VSS", "speed"],
  ["speed pulse", "speed"],
  ["SWC 2", "steering-key-2"],
  ["mic gnd", "microphone-minus"],
  ["USB D-", "usb-data-minus"],
  ["electric brakes", "trailer-brake"],
  ["bilge pump auto", "bilge-float"],
  ["nav lights", "navigation-lights"],
  ["wiper park", "wiper-park"],
  ["oil pressure", "oil-pressure"],
  ["water temp", "coolant-temperature"],
  ["tacho signal output", "tachometer"],
  ["alternator D+", "alternator-lamp"],
  ["A/C clutch", "compressor-clutch"],
  ["n.c.", "not-used"],
];

const OPEN: readonly (readonly [string, readonly string[]])[] = [
  ["B+", ["constant-feed", "alternator-output"]],
  ["IGN", ["ignition-feed", "switched-feed"]],
  ["12V", ["constant-feed", "switched-feed"]],
  ["+12 Volt DC", ["constant-feed", "switched-feed"]],
  ["power", ["constant-feed", "switched-feed"]],
  ["remote", ["amplifier-turn-on", "antenna-power", "remote-control"]],
  ["sub", ["line-subwoofer-signal", "speaker-subwoofer-plus"]],
  ["antenna", ["antenna-power", "antenna-signal"]],
  ["brake", ["stop-lamp", "parking-brake", "trailer-brake"]],
  ["dimmer", ["dimmer-return", "illumination"]],
  ["left -", ["speaker-front-left-minus", "speaker-rear-left-minus"]],
  ["front left speaker", ["speaker-front-left-plus", "speaker-front-left-minus"]],
];

describe("a clear wording", () => {
  test.each(SURE)("%s is %s", (text, id) => {
    const reading = readFunction(text);
    expect(reading.candidates[0]?.function).toBe(id);
    expect(reading.certain).toBe(true);
  });

  test("upper and lower case, word order and blanks change nothing", () => {
    const words = fc.constantFrom(...SURE.filter(([text]) => /^[a-zA-Z ]+ [a-zA-Z ]+$/.test(text)));
    fc.assert(
      fc.property(words, fc.boolean(), fc.boolean(), ([text, id], upper, back) => {
        const cased = upper ? text.toUpperCase() : text;
        const turned = back ? `  ${cased.split(" ").reverse().join("   ")} ` : cased;
        // Turned round, a phrase may fall apart; what is still read is read the same.
        const [first] = readFunction(turned).candidates;
        if (!back) expect(first?.function).toBe(id);
        else if (readFunction(turned).certain)
          expect(functionOf(first!.function).group).toBe(functionOf(id).group);
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  test.each([
    ["groudn", "ground"],
    ["iluminaton", "illumination"],
    ["battrey", "constant-feed"],
    ["speeker front lft +", "speaker-front-left-plus"],
    ["acessory", "switched-feed"],
    ["antena power", "antenna-power"],
  ])("a slip of the pen: %s is %s", (text, id) => {
    expect(readFunction(text).candidates[0]?.function).toBe(id);
  });
});

describe("an ambiguous wording carries its alternatives", () => {
  test.each(OPEN)("%s", (text, ids) => {
    const { candidates, certain } = readFunction(text);
    expect(certain).toBe(false);
    expect(candidates.map((one) => one.function)).toEqual(expect.arrayContaining([...ids]));
    expect(candidates.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 1);
  });
});

test("words nobody knows are nothing", () => {
  for (const text of ["", "zorble", "xq 77", "***", "¿?"]) expect(readFunction(text).candidates).toEqual([]);
});

test("whatever is typed, it is answered", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200, unit: "binary" }), (text) => {
      const { candidates } = readFunction(text);
      for (const one of candidates) expect(functionOf(one.function).id).toBe(one.function);
    }),
    { numRuns: 300, seed: 11 },
  );
});

describe("the vocabulary", () => {
  test("every function is found by its own name", () => {
    const lost = FUNCTIONS.filter(
      ({ id, name }) => id !== "unknown" && !readFunction(name).candidates.some((one) => one.function === id),
    );
    expect(lost.map((item) => item.name)).toEqual([]);
  });

  test("meanings and phrases are made of ideas that have words", () => {
    const ideas = new Set(Object.keys(ENGLISH));
    const used = FUNCTIONS.flatMap((item) => item.meanings.flatMap((meaning) => meaning.split(/\s+/)));
    for (const word of used) expect(ideas.has(word.replace(/\?|@[\d.]+/g, "")), word).toBe(true);
    for (const [phrase, made] of Object.entries(ENGLISH_PHRASES))
      for (const idea of made.split(" ")) expect(ideas.has(idea), `${phrase}: ${idea}`).toBe(true);
  });
});
