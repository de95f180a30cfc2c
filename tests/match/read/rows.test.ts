import { describe, expect, test } from "vitest";
import { readCharts } from "../../../src/match/read-chart.ts";
import { oneChart, rowsOf, told } from "./told.ts";

describe("figures", () => {
  test.each([
    ["1 red battery 0,75 mm²", "1 constant-feed RD 0.75mm²"],
    ["1 red battery 2.5² fuse 15 A", "1 constant-feed RD 2.5mm² fuse 15A"],
    ["1 red 18 AWG battery, max. 5 A", "1 constant-feed RD 0.823mm² 5A"],
    ["1 red 18ga battery 300 mA", "1 constant-feed RD 0.823mm² 0.3A"],
    ["1 rot Dauerplus 4qmm Sicherung 7,5 A", "1 constant-feed RD 4mm² fuse 7.5A"],
    ["1 rouge + permanent fusible F12 20A", "1 constant-feed RD fuse 20A"],
    ["1 red battery 10A fused", "1 constant-feed RD fuse 10A"],
    ["1 red reverse signal input", "1 reverse RD takes"],
    ["1 red reverse (out)", "1 reverse RD gives"],
    ["1 rot Rückfahrlicht Ausgang", "1 reverse RD gives"],
  ])("%s", (line, row) => {
    expect(rowsOf(`${line}\n2 black ground\n3 white illumination`)[0]).toBe(row);
  });

  test("a preposition is no direction", () => {
    expect(rowsOf("1 red 12V in accessory position\n2 black ground")[0]).not.toMatch(/takes|gives/);
  });

  test("bare sizes are gauges where the head or the person says so", () => {
    const text = "Cav\tGa\tColor\tCircuit\nA\t18\tRED\tBATTERY\nB\t20\tBLK\tGROUND\nC\t20\tWHT\tHORN";
    expect(oneChart(text).leads.map(({ area_mm2 }) => area_mm2?.toFixed(3))).toEqual([
      "0.823",
      "0.518",
      "0.518",
    ]);
    const open = "1\t18\tRED\tBATTERY\n2\t18\tBLK\tGROUND\n3\t18\tWHT\tHORN";
    expect(
      readCharts(`Pin\tSize\tColour\tUse\n${open}`, { sizes: "awg" }).charts[0]!.leads[0]!.area_mm2,
    ).toBeCloseTo(0.823, 3);
  });

  test("12 V is no label, 30 amperes are none, terminals in a column of words are words", () => {
    const leads = oneChart("12V battery – red\n12V accessory – yellow\nground – black").leads;
    expect(leads.map(({ label }) => label)).toEqual([null, null, null]);
    expect(rowsOf("1;30;red\n2;31;brown\n3;15;black\n4;54;grey")).toEqual([
      "1 constant-feed RD",
      "2 ground BN",
      "3 ignition-feed BK",
      "4 stop-lamp GY",
    ]);
  });
});

describe("labels", () => {
  test("are kept as printed, without the word before them", () => {
    const read = (text: string) => oneChart(text).leads.map(({ label }) => label);
    expect(read("Pin 3: red battery\nPin 4: black ground")).toEqual(["3", "4"]);
    expect(read("C1-12 red battery\nC2-7 black ground")).toEqual(["C1-12", "C2-7"]);
    expect(read("#7 red battery\n#8 black ground")).toEqual(["7", "8"]);
    expect(read("PIN1:RED:BATT\nPIN2:BLACK:GND")).toEqual(["1", "2"]);
    expect(read("Kammer 4; Masse; br\nKammer 5; Horn; sw")).toEqual(["4", "5"]);
    expect(read("1/L yellow left turn\n2/54g blue rear fog\n3/31 white ground")).toEqual([
      "1/L",
      "2/54g",
      "3/31",
    ]);
    expect(read("A red battery\nB black ground\nC white horn\nD green reverse")).toEqual([
      "A",
      "B",
      "C",
      "D",
    ]);
  });

  test("a label that stands twice makes two leads, and that is said", () => {
    const read = readCharts("Pin\tSignal\n4\tACC\n4\tGND\n5\tHorn");
    expect(read.charts[0]!.leads.map(({ name }) => name)).toEqual(["4", "4 (2)", "5"]);
    expect(read.remarks).toHaveLength(1);
  });

  test("the same numbers in two housings of one table are told apart by the housing", () => {
    const text =
      "connector X1 | pin 1 | red | battery\nconnector X1 | pin 2 | black | ground\nconnector X2 | pin 1 | white | FL+\nconnector X2 | pin 2 | white/black | FL-";
    expect(oneChart(text).leads.map(({ name }) => name)).toEqual(["X1-1", "X1-2", "X2-1", "X2-2"]);
  });

  test("a chart without labels names its leads by colour, then by words", () => {
    const names = oneChart(
      "WHT/BLK  LF spk -\nlt grn   parking brake\nWHT      LF spk +\nGRN  reverse",
    ).leads.map(({ name }) => name);
    expect(names).toEqual(["WH/BK", "GN", "WH", "GN (2)"]);
    expect(oneChart("Constant 12V\nGround\nIllumination").leads.map(({ name }) => name)).toEqual([
      "Constant 12V",
      "Ground",
      "Illumination",
    ]);
  });

  test("a chart of terminals: the label says what the lead is for", () => {
    expect(rowsOf("30 red\n31 brown\n15 black\n58d grey/blue").slice(0, 3)).toEqual([
      "30 constant-feed RD",
      "31 ground BN",
      "15 ignition-feed BK",
    ]);
  });
});

describe("polarity and separators", () => {
  test("a dash is a minus where the words need it, and a separator elsewhere", () => {
    const rows = rowsOf(
      "A8 ground - black\nB1 right rear speaker + violet\nB2 right rear speaker - violet/black\nB3 right front speaker + grey\nB4 right front speaker - grey/black",
    );
    expect(rows).toEqual([
      "A8 ground BK",
      "B1 speaker-rear-right-plus VT",
      "B2 speaker-rear-right-minus VT/BK",
      "B3 speaker-front-right-plus GY",
      "B4 speaker-front-right-minus GY/BK",
    ]);
  });

  test("words in several columns are read together", () => {
    const text =
      "Speaker\tPos\tPolarity\tColour\nFront\tLeft\t+\tWhite\nFront\tLeft\t-\tWhite/Black\nRear\tRight\t+\tViolet";
    expect(rowsOf(text)).toEqual([
      "WH speaker-front-left-plus WH",
      "WH/BK speaker-front-left-minus WH/BK",
      "VT speaker-rear-right-plus VT",
    ]);
  });
});

test("unused: in words of seven languages, strokes, and cells left blank", () => {
  const words = [
    "not used",
    "n.c.",
    "nicht belegt",
    "libre",
    "non connecté",
    "sin uso",
    "non usato",
    "niet gebruikt",
    "wolny",
    "—",
    "",
  ];
  const text = [
    "Pin\tSignal\tColour",
    "1\tBattery\tred",
    ...words.map((word, index) => `${index + 2}\t${word}\t`),
  ].join("\n");
  const { leads } = oneChart(text);
  expect(leads.map(({ isUnused }) => isUnused)).toEqual([false, ...words.map(() => true)]);
});

describe("what is no row", () => {
  test("is a note; what looks like a row and is none that can be read is shown as written", () => {
    const chart = oneChart(
      "Receiver of the exhibition trailer\n1  red    battery\n2  black  ground\n   ??? smudged here\n3  white  horn\n\nNote: all connectors seen from the wire side.\nPage 3",
    );
    expect(chart.title).toBe("Receiver of the exhibition trailer");
    expect(chart.leads.map(told)).toEqual(["1 constant-feed RD", "2 ground BK", "3 horn WH"]);
    expect(chart.notes.map(({ line }) => line)).toEqual([1, 7, 8]);
    expect(chart.unread).toEqual([{ line: 4, text: "??? smudged here" }]);
  });

  test("a lead whose words nobody knows is still a lead, without a function", () => {
    const [, lead] = oneChart("1;red;battery\n2;black;wobblefrotz\n3;white;horn").leads;
    expect(lead).toMatchObject({
      name: "2",
      text: "wobblefrotz",
      colour: { base: "BK" },
      reading: { candidates: [] },
    });
  });

  test("every source is kept whole", () => {
    const [lead] = oneChart("  A4:  +12V constant   (yellow)\n  A8:  ground (black)").leads;
    expect(lead!.source).toBe("  A4:  +12V constant   (yellow)");
    expect(lead!.colourText).toBe("yellow");
    expect(lead!.text).toBe("+12V constant");
  });
});
