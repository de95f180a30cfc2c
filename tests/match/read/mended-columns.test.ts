import { expect, test } from "vitest";
import { readCharts } from "../../../src/match/read-chart.ts";
import { oneChart, rowsOf, told } from "./told.ts";

// Charts of our own invention (common practice, no source).

test("heads that stand otherwise than their rows are heads, and a title in capitals is a title", () => {
  const chart = oneChart(
    "AFT SWITCH BOARD - WIRE TAGS\nTag  Wire  Sq.mm  Load\nT1   BRN   2.5    BILGE PUMP\nT2   LT GRN 1.5   CABIN LIGHTS\nT3   ORG   2.5    HORN\nT4   BLK   4      NEGATIVE BUS",
  );
  expect(chart.leads.map(told)).toEqual([
    "T1 bilge-pump BN 2.5mm²",
    "T2 interior-lamp GN 1.5mm²",
    "T3 horn OG 2.5mm²",
    "T4 ground BK 4mm²",
  ]);
  expect(chart.title).toBe("AFT SWITCH BOARD - WIRE TAGS");
});

test.each(["GA", "ga.", "Gauge", "AWG"])("a size under %s, close to the circuit's number", (head) => {
  const chart = oneChart(
    [
      `${`CAV  ${head} CKT`.padEnd(16)}COLOR    CIRCUIT`,
      "A1   18 100     ORG      BATTERY",
      "A2   20 1204    BLK/WHT  ILLUM LAMPS",
      "A3   18 7       BLK      GROUND",
    ].join("\n"),
  );
  expect(chart.leads.map(({ area_mm2 }) => area_mm2?.toFixed(2))).toEqual(["0.82", "0.52", "0.82"]);
  expect(chart.leads.map(({ kept }) => kept)).toEqual([["100"], ["1204"], ["7"]]);
});

test.each(["Sq.mm", "mm2", "CSA", "Querschnitt", "section", "sez.", "doorsnede", "przekrój"])(
  "a size under %s",
  (head) => {
    const [lead] = oneChart(`Pin\tColour\t${head}\tFunction\n1\tred\t6\tbattery\n2\tblack\t6\tground`).leads;
    expect(lead!.area_mm2).toBe(6);
  },
);

test("a range of pins inside the words is no label", () => {
  expect(
    rowsOf(
      "left flasher         yellow   1.5\nearth for pins 1-8   white    2.5\nstop                 red      1.5",
    ),
  ).toEqual(["YE indicator-left YE 1.5mm²", "WH ground-lamps WH 2.5mm²", "RD stop-lamp RD 1.5mm²"]);
});

test("a dash that stands alone between columns parts them", () => {
  expect(
    rowsOf(
      "Post a  -  horn - red 2.5mm²\nPost b  -  earth - black 2.5mm²\nPost c  -  reverse lamp - white 1mm²",
    ),
  ).toEqual(["a horn RD 2.5mm²", "b ground BK 2.5mm²", "c reverse WH 1mm²"]);
});

test("other marks part columns as well", () => {
  for (const mark of ["·", " ▸ ", " » ", " ¦ ", " ~ "]) {
    const rows = [
      ["a", "noir", "masse"],
      ["b", "rouge", "permanent 12 V"],
      ["c", "blanc", "klaxon"],
    ];
    expect(rowsOf(rows.map((row) => row.join(mark)).join("\n"))).toEqual([
      "a ground BK",
      "b constant-feed RD",
      "c horn WH",
    ]);
  }
});

test("labels behind dots, under a title with the number of its page", () => {
  const chart = oneChart(
    "DECK PANEL                  page 3 of 7\n bilge pump ............ 1\n battery minus ......... 2\n horn .................. 10",
  );
  expect(chart.leads.map(told)).toEqual(["1 bilge-pump", "2 ground", "10 horn"]);
});

test("terminals with a sign are labels", () => {
  const { leads } = oneChart(
    "IN +      starter battery positive\nIN -      starter battery negative\nOUT +     second battery positive\nOUT -     second battery negative\nLIN       data bus",
  );
  expect(leads.map(({ name }) => name)).toEqual(["IN +", "IN -", "OUT +", "OUT -", "LIN"]);
});

test("a row that only the right one of two charts has", () => {
  const { charts } = readCharts(
    "1  red    battery   |  A  black  earth\n2  black  earth     |  B  red    battery\n3  white  horn      |  C  white  horn\n                    |  D  pink   reverse",
  );
  expect(charts.map((chart) => chart.leads.map(({ name }) => name))).toEqual([
    ["1", "2", "3"],
    ["A", "B", "C", "D"],
  ]);
});

test("running numbers under a head of fuses name the ways", () => {
  expect(
    rowsOf(
      "Sicherung  Verbraucher    Draht\n1          Hupe           gr\n2          Bilgenpumpe    br\n3          Minus          sw",
    ),
  ).toEqual(["1 horn GY", "2 bilge-pump BN", "3 ground BK"]);
});
