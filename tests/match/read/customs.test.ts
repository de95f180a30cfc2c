import { expect, test } from "vitest";
import { oneChart, rowsOf } from "./told.ts";

// Charts of our own invention in the manners of several trades and countries (common practice, no source).

test("gauges under a head that does not say so", () => {
  const text =
    "Pin\tWire\tSize\tDescription\n1\tLT GRN/BLK\t20\tLF SPKR -\n3\tORN\t18\tBATT FEED (HOT AT ALL TIMES)\n6\t--\t--\tNOT USED\n8\tYEL\t20\tACC FEED";
  expect(rowsOf(text)).toEqual([
    "1 speaker-front-left-minus GN/BK 0.518mm²",
    "3 constant-feed OG 0.823mm²",
    "6 unused",
    "8 switched-feed YE 0.518mm²",
  ]);
});

test("sizes beside the colour, their unit left out", () => {
  expect(rowsOf("A1  0.8 DK GRN    LF SPKR +\nA2  0.8 GRY/BLK   LF SPKR -\nA3  1 ORN         BATT")).toEqual([
    "A1 speaker-front-left-plus GN 0.8mm²",
    "A2 speaker-front-left-minus GY/BK 0.8mm²",
    "A3 constant-feed OG 1mm²",
  ]);
  expect(rowsOf("A1\t0.5BK\tGround\nA2\t0.5W/R\tIllumination\nA3\t1.25R\tBattery")).toEqual([
    "A1 ground BK 0.5mm²",
    "A2 illumination WH/RD 0.5mm²",
    "A3 constant-feed RD 1.25mm²",
  ]);
  expect(
    rowsOf("B+ | Ladeleitung | rt 10\nD+ | Ladekontrolle | bl 1\nB- | Masse | br 10").map((row) =>
      row.split(" ").at(-1),
    ),
  ).toEqual(["10mm²", "1mm²", "10mm²"]);
});

test("letters of colours are read where they stand in every line", () => {
  expect(rowsOf("1 sw Masse\n2 gr Horn\n3 rt Dauerplus\n4 br/ws Rückfahrlicht")).toEqual([
    "1 ground BK",
    "2 horn GY",
    "3 constant-feed RD",
    "4 reverse BN/WH",
  ]);
});

test("marks that are no numbers are labels where each line has its own", () => {
  const names = (text: string) => oneChart(text).leads.map(({ name }) => name);
  expect(names("UP windlass up\nDN windlass down\nWD wash down pump\nB- battery negative")).toEqual([
    "UP",
    "DN",
    "WD",
    "B-",
  ]);
  expect(
    names(
      "L   low speed wipe      green\nH   fast wipe           green/yellow\nE   earth               brown",
    ),
  ).toEqual(["L", "H", "E"]);
  expect(
    names(
      "49a Blinkgeber sw/ge\nL Blinker links sw/ws\nR Blinker rechts sw/gn\n31 Masse braun\n56a Fernlicht weiß",
    ),
  ).toEqual(["49a", "L", "R", "31", "56a"]);
  expect(names("OUT1+ front left +\nOUT1- front left -\nOUT2+ front right +")).toEqual([
    "OUT1+",
    "OUT1-",
    "OUT2+",
  ]);
});

test("two housings under one another, each counted from 1", () => {
  const chart = oneChart(
    "Connecteur bleu\n1  gris      HP AR D +\n2  gris/noir HP AR D -\n3  blanc     HP AR G +\nConnecteur marron\n1  rouge     + permanent\n2  noir      masse\n3  orange    veilleuses",
  );
  expect(chart.leads.map(({ name }) => name)).toEqual(["1", "2", "3", "1 (2)", "2 (2)", "3 (2)"]);
  expect(chart.notes.map(({ text }) => text)).toEqual(["Connecteur bleu", "Connecteur marron"]);
});

test("a cell to a line, as some pages give their tables", () => {
  const rows = ["1 constant-feed RD", "2 ground BK", "3 horn WH"];
  expect(rowsOf("Pin\nColour\nFunction\n1\nRed\nBattery\n2\nBlack\nGround\n3\nWhite\nHorn")).toEqual(rows);
  expect(oneChart("Radio plug\n1\nBattery\n2\nGround\n3\nHorn").title).toBe("Radio plug");
});

test("a sentence that tells its leads in brackets", () => {
  expect(rowsOf("Battery (yellow, A4), ignition switched (red, A7), ground (black, A8).")).toEqual([
    "A4 constant-feed YE",
    "A7 switched-feed RD",
    "A8 ground BK",
  ]);
});

test("headings are notes, also where they begin as a row does", () => {
  const chart = oneChart("8.3  Radio connector XR1\n1  yellow  battery\n2  black  ground\n3  red  accessory");
  expect(chart.leads.map(({ name }) => name)).toEqual(["1", "2", "3"]);
  expect(chart.title).toBe("8.3 Radio connector XR1");
});
