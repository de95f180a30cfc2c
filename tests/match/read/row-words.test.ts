import { describe, expect, test } from "vitest";
import { oneChart, rowsOf } from "./told.ts";

// Charts of our own invention (common practice, no source).

const labels = (text: string) => oneChart(text).leads.map(({ label }) => label);

describe("a word before the label of most rows is no part of it", () => {
  test.each([
    ["bolt A: horn\nbolt B: ground\nbolt C: reverse", ["A", "B", "C"]],
    ["Strand 1 | white | horn\nStrand 2 | black | ground\nStrand 4 | red | battery", ["1", "2", "4"]],
    ["tape 3 - white - horn\ntape 4 - black - ground\ntape 5 - green - reverse", ["3", "4", "5"]],
    ["fil n°7 (noir) masse\nfil n°8 (vert) klaxon\nfil n°9 (rouge) + permanent", ["7", "8", "9"]],
    ["spina 1: massa, nero\nspina 2: retromarcia, bianco\nspina 3: luci stop", ["1", "2", "3"]],
    ["claxon, wit, draad 11\nmassa, zwart, draad 12\nachteruit, groen, draad 13", ["11", "12", "13"]],
    ["żyła 1 - czarny - masa\nżyła 2 - biały - cofanie\nżyła 3 - czerwony - stop", ["1", "2", "3"]],
    ["N° 3 masse noir\nN° 4 klaxon vert\nN° 5 feux stop rouge", ["3", "4", "5"]],
    ["No. 4 ground black\nNo. 5 horn white\nNo. 6 stop lamp red", ["4", "5", "6"]],
    ["Spina 1/bianco/retromarcia\nSpina 2/nero/massa\nSpina 3/rosso/stop", ["1", "2", "3"]],
    ["Leitung 1 (sw): Masse\nLeitung 2 (rt): Dauerplus\nLeitung 3 (ge): Hupe", ["1", "2", "3"]],
    ["n. 1 - massa, nero\nn. 2 - retromarcia, bianco\nn. 3 - luci stop, rosso", ["1", "2", "3"]],
  ])("%s", (text, wanted) => {
    expect(labels(text)).toEqual(wanted);
  });

  test("one that says what the lead is for stays with it", () => {
    const { leads } = oneChart("camera 1 - yellow\ncamera 2 - white\ncamera 3 - green\nground - black");
    expect(leads.map(({ text }) => text)[3]).toBe("ground");
    expect(leads.every(({ reading }) => reading.candidates.length > 0)).toBe(true);
  });
});

test("what a housing prints in one word with its figure stays whole", () => {
  expect(
    labels("K30 | dauerplus | rt\nKR1 | Rückfahrlicht | sw\nKL1 | Blinker links | bl\nKP1 | Horn | vi"),
  ).toEqual(["K30", "KR1", "KL1", "KP1"]);
  expect(labels("X3/5 red battery\nX3/6 black ground\nX3/7 white horn")).toEqual(["X3/5", "X3/6", "X3/7"]);
});

test("terminals of DIN 72552 in the words beside labels are words", () => {
  expect(rowsOf("1 | Kl. 30 | rot\n2 | Kl. 31 | br\n3 | Kl. 15 | sw\n4 | KL 58 | gr")).toEqual([
    "1 constant-feed RD",
    "2 ground BN",
    "3 ignition-feed BK",
    "4 illumination GY",
  ]);
});

describe("letters in sequence are labels and no colours", () => {
  test.each([
    "A: ground\nB: tail lamps\nC: stop lamp",
    "A - ground\nB - tail lamps\nC - stop lamp",
    "A = ground\nB = tail lamps\nC = stop lamp",
    "A\tground\nB\ttail lamps\nC\tstop lamp",
    "a) ground\nb) tail lamps\nc) stop lamp",
    "stud A: ground\nstud B: tail lamps\nstud C: stop lamp",
  ])("%s", (text) => {
    const { leads } = oneChart(text);
    expect(leads.map(({ name }) => name.toUpperCase())).toEqual(["A", "B", "C"]);
    expect(leads.map(({ colour }) => colour)).toEqual([null, null, null]);
    expect(leads.map(({ reading }) => reading.candidates[0]?.function)).toEqual([
      "ground",
      "tail-lamps",
      "stop-lamp",
    ]);
  });
});

test("the colour behind every label is read where what follows shines", () => {
  expect(rowsOf("1 rosso +12V batteria\n2 nero massa\n3 bianco led antifurto\n4 vuota")).toEqual([
    "1 constant-feed RD",
    "2 ground BK",
    "3 alarm-led WH",
    "4 unused",
  ]);
});
