import { describe, expect, test } from "vitest";
import { readCharts } from "../../../src/match/read-chart.ts";
import { oneChart, rowsOf, told } from "./told.ts";

// Every chart here is of our own invention, laid out as makers' charts are (common practice, no source).

const RADIO = ["A4 constant-feed YE", "A7 switched-feed RD", "A8 ground BK", "B1 speaker-rear-right-plus VT"];

describe("one chart, whatever separates its columns", () => {
  const cells = [
    ["A4", "yellow", "+12V constant"],
    ["A7", "red", "accessory"],
    ["A8", "black", "ground"],
    ["B1", "violet", "right rear speaker +"],
  ];
  test.each([
    ["tab", "\t"],
    ["semicolon", ";"],
    ["comma", ","],
    ["bar", " | "],
    ["blanks", "   "],
    ["a blank", " "],
    ["dash", " - "],
    ["en dash", " – "],
    ["colon", ": "],
    ["equals", " = "],
    ["arrow", " -> "],
    ["slash", " / "],
  ])("%s", (_name, separator) => {
    expect(rowsOf(cells.map((row) => row.join(separator)).join("\n"))).toEqual(RADIO);
  });

  test.each([
    [
      "label, words, colour in brackets",
      ([label, colour, words]: string[]) => `${label}: ${words} (${colour})`,
    ],
    [
      "colour, words, label with its word",
      ([label, colour, words]: string[]) => `${colour} wire: ${words}, pin ${label}`,
    ],
    ["words, colour, label", ([label, colour, words]: string[]) => `${words} ${colour} ${label}`],
    ["dots between", ([label, colour, words]: string[]) => `${label} ${colour} ........ ${words}`],
    ["a list", ([label, colour, words]: string[]) => `  • ${label}) ${words} – ${colour}`],
  ])("%s", (_name, write) => {
    expect(rowsOf(cells.map(write).join("\n"))).toEqual(RADIO);
  });
});

test("quoted cells hold separators, quotes and line ends", () => {
  const text =
    '"Pin","Signal","Wire"\n"1","Battery, ""always""\nlive","yellow"\n2,"Speaker, front, left, -",white/black\n';
  expect(rowsOf(text)).toEqual(["1 constant-feed YE", "2 speaker-front-left-minus WH/BK"]);
});

test("a table of a plain-text page", () => {
  const chart = oneChart(
    "# Receiver, step van Wren\n\n| Pin | Colour | Function |\n|-----|:------:|----------|\n| 1 | RD | **Battery** |\n| 2 | BK | Ground |\n\nNote: seen from the wire side.",
  );
  expect(chart.leads.map(told)).toEqual(["1 constant-feed RD", "2 ground BK"]);
  expect(chart.title).toBe("Receiver, step van Wren");
  expect(chart.notes.map(({ line }) => line)).toEqual([1, 8]);
});

test("columns that only stand under one another, with cells left out and one that goes on below", () => {
  const chart = oneChart(`Wren: 20-pin dash connector (view from wire side)
Rev B, 2019-04-02

Pin  Colour   Circuit                     mm2   Fuse
---- -------- --------------------------- ----- -----
1    RD       Permanent +12 V             2.5   F3 20A
2    RD/WH    Ignition feed               1.5   F7 10A
3    BK       Earth                       2.5
4    -        -
5    GY       Side lights                 0.75
6    WH/BK    Left front speaker          0.75
              negative
7-8  not used

All wires thin-walled.
Page 2 of 3`);
  expect(chart.leads.map(told)).toEqual([
    "1 constant-feed RD 2.5mm² fuse 20A",
    "2 ignition-feed RD/WH 1.5mm² fuse 10A",
    "3 ground BK 2.5mm²",
    "4 unused",
    "5 tail-lamps GY 0.75mm²",
    "6 speaker-front-left-minus WH/BK 0.75mm²",
    "7 unused",
    "8 unused",
  ]);
  expect(chart.leads[5]!.text).toBe("Left front speaker negative");
  expect(chart.unread).toEqual([]);
  expect(chart.notes.map(({ line }) => line)).toEqual([1, 2, 15, 16]);
});

test("the source of a page: entities, cells over several rows, no markup in the words", () => {
  const chart = oneChart(`<html><style>td { color: red }</style><body><h1>Faisceau</h1><table>
<tr><th>Broche</th><th>Couleur</th><th>Fonction</th></tr>
<tr><td>1</td><td rowspan=2>noir</td><td><b>Masse</b><script>alert(1)</script></td></tr>
<tr><td>2</td><td>Masse &lt;ch&acirc;ssis&gt;</td></tr>
<tr><td>3</td><td>vert/blanc</td><td>Feu&nbsp;stop</td></tr></table></body></html>`);
  expect(chart.title).toBe("Faisceau");
  expect(chart.leads.map(told)).toEqual(["1 ground BK", "2 ground BK", "3 stop-lamp GN/WH"]);
  expect(chart.leads.map(({ text }) => text)).toEqual(["Masse", "Masse <châssis>", "Feu stop"]);
});

test("one line that tells several cavities", () => {
  expect(rowsOf("1=GND, 2=+12V constant, 3=CAN-H, 4=CAN-L, 5=n.c.")).toEqual([
    "1 ground",
    "2 constant-feed",
    "3 can-high",
    "4 can-low",
    "5 unused",
  ]);
});

describe("two charts side by side", () => {
  const both = [
    ["1 constant-feed RD", "2 ground BN"],
    ["1 constant-feed YE", "2 ground BK"],
  ];
  test.each([
    [
      "heads, and a blank column between",
      "Pin\tSignal\tColour\t\tPin\tSignal\tColour\n1\tBattery\tRD\t\t1\tConstant\tYE\n2\tGround\tBN\t\t2\tEarth\tBK",
    ],
    ["no heads", "1\tBattery\tRD\t1\tConstant\tYE\n2\tGround\tBN\t2\tEarth\tBK"],
    [
      "columns the other way round",
      "Pin\tSignal\tColour\tColour\tSignal\tPin\n1\tBattery\tRD\tYE\tConstant\t1\n2\tGround\tBN\tBK\tEarth\t2",
    ],
    ["columns of blanks", "1  RD  Battery      1  YE  Constant\n2  BN  Ground       2  BK  Earth"],
    [
      "a page",
      "<table><tr><td>1<td>Battery<td>RD<td>1<td>Constant<td>YE</tr><tr><td>2<td>Ground<td>BN<td>2<td>Earth<td>BK</tr></table>",
    ],
  ])("%s", (_name, text) => {
    const read = readCharts(text);
    expect(read.charts.map((chart) => chart.leads.map(told))).toEqual(both);
    expect(read.remarks).toHaveLength(1);
  });

  test("each under its own title, one longer than the other, one without labels", () => {
    const read = readCharts(
      "Vehicle side\t\t\tRadio side\nPin\tFunction\tColour\tLead\tFunction\n1\tBattery\tRD\tyellow\tconstant 12V\n2\tGround\tBN\tblack\tground\n3\tACC\tBK/RD\t\t",
    );
    expect(read.charts.map(({ title }) => title)).toEqual(["Vehicle side", "Radio side"]);
    expect(read.charts.map((chart) => chart.leads.map(told))).toEqual([
      ["1 constant-feed RD", "2 ground BN", "3 switched-feed BK/RD"],
      ["YE constant-feed YE", "BK ground BK"],
    ]);
  });

  test("a long chart in two columns of rows is one", () => {
    const text =
      "PIN FUNCTION            PIN FUNCTION\n1   Battery             4   Reverse\n2   Ground              5   Left indicator\n3   ACC                 6   Horn";
    expect(rowsOf(text).map((row) => row.split(" ")[0])).toEqual(["1", "2", "3", "4", "5", "6"]);
  });
});

test("columns by their heads in seven languages, in any order", () => {
  const charts = [
    "Colour\tPin\tFunction\nred\t1\tbattery\nblack\t2\tground",
    "Farbe\tKontakt\tFunktion\nrot\t1\tDauerplus\nschwarz\t2\tMasse",
    "Désignation\tVoie\tCouleur\n+ permanent\t1\trouge\nmasse\t2\tnoir",
    "Función\tColor\tCavidad\nbatería\trojo\t1\nmasa\tnegro\t2",
    "Colore filo\tContatto\tFunzione\nrosso\t1\tpositivo batteria\nnero\t2\tmassa",
    "Draadkleur\tPositie\tOmschrijving\nrood\t1\tconstante voeding\nzwart\t2\tmassa",
    "Kolor przewodu\tStyk\tFunkcja\nczerwony\t1\tstałe zasilanie\nczarny\t2\tmasa",
  ];
  for (const chart of charts) {
    const { leads } = oneChart(chart);
    expect(leads.map(({ label }) => label)).toEqual(["1", "2"]);
    expect(leads.map(({ colour }) => colour?.base)).toEqual(["RD", "BK"]);
  }
});

test("rows of a sheet: lines are its rows, and a running number is no label where there is one", () => {
  const chart = oneChart([
    ["Connector of the trailer"],
    [],
    ["No.", "Pin", "Signal", "Dir", "Colour", "mm²", "A"],
    ["1", "A1", "Reverse", "IN", "WH", "0.5", ""],
    ["2", "A2", "Battery", "IN", "RD", "1.5", "10"],
    ["3", "A3", "Amp turn-on", "OUT", "BU/WH", "0,5", "0.2"],
  ]);
  expect(chart.leads.map(told)).toEqual([
    "A1 reverse WH 0.5mm² takes",
    "A2 constant-feed RD 1.5mm² 10A takes",
    "A3 amplifier-turn-on BU/WH 0.5mm² 0.2A gives",
  ]);
  expect(chart.leads.map(({ line }) => line)).toEqual([4, 5, 6]);
});

describe("the source of a page without a table", () => {
  const rows = ["1 illumination BK", "2 horn WH", "3 ground BN"];
  test.each([
    [
      "a list",
      '<div class="red">Lift</div>\n<ul>\n<li>1 - Black - &Eacute;clairage</li>\n<li id="green">2 - <b>White</b> - Horn</li>\n<li>3 - Brown - Ground</li>\n</ul>',
    ],
    ["paragraphs", "<p>1: &Eacute;clairage (noir)</p><p>2: klaxon (blanc)</p><p>3: masse (marron)</p>"],
    ["broken lines", "1 black lighting<br>2 white horn<br/>3 brown ground"],
    [
      "terms and what they mean",
      "<dl><dt>1</dt><dd>black – lighting</dd><dt>2:</dt><dd>white – horn</dd><dt>3</dt><dd>brown – ground</dd></dl>",
    ],
    [
      "tags left in text",
      "1 | <span style='color:red'>black</span> | &eacute;clairage\n2 | white | <b>horn</b>\n3 | brown | masse",
    ],
    ["as written", "<div>Loom</div><pre>\n1  black   lighting\n2  white   horn\n3  brown   ground\n</pre>"],
  ])("%s", (_name, text) => {
    const chart = oneChart(text);
    expect(chart.leads.map(told)).toEqual(rows);
    expect(JSON.stringify(chart)).not.toMatch(/[<>]/);
  });

  test("every line of a list keeps its line number", () => {
    const chart = oneChart(
      "<ul>\n<li>1 black ground</li>\n\n<li>2 white horn</li></ul>\n<p>Seen from behind.</p>",
    );
    expect(chart.leads.map(({ line }) => line)).toEqual([2, 4]);
    expect(chart.notes.map(({ line }) => line)).toEqual([5]);
  });
});

test("a colour on one line and what it is for on the next", () => {
  const rows = ["RD constant-feed RD", "BK ground BK", "WH horn WH"];
  expect(rowsOf("Rot\nDauerplus\nSchwarz\nMasse\nWeiß\nHorn")).toEqual(rows);
  expect(rowsOf("Funkcja\nKolor\nstałe zasilanie\nczerwony\nmasa\nczarny\nklakson\nbiały")).toEqual(rows);
});
