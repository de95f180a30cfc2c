import { describe, expect, test } from "vitest";
import { oneChart, told } from "./told.ts";

// Charts of our own invention (common practice, no source).

describe("a field to a line, a block to a lead", () => {
  const rows = ["1 constant-feed RD 2.5mm²", "2 ground BK 2.5mm²", "3 unused"];
  test.each([
    [
      "with blank lines between",
      "Pin: 1\nColour: red\nSize: 2.5 mm²\nFunction: battery\n\nPin: 2\nColour: black\nSize: 2.5 mm²\nFunction: earth\n\nPin: 3\nFunction: not used",
    ],
    [
      "without them",
      "Broche : 1\nFonction : batterie\nCouleur : rouge\nSection : 2,5\nBroche : 2\nFonction : masse\nCouleur : noir\nSection : 2,5\nBroche : 3\nFonction : libre",
    ],
    [
      "the label opens a block",
      "Pin 1\n  Farbe: rot 2,5\n  Funktion: Dauerplus\nPin 2\n  Farbe: schwarz 2,5\n  Funktion: Masse\nPin 3\n  Funktion: nicht belegt",
    ],
    [
      "all in one line",
      "Pin: 1 / Colour: red / Size: 2.5 mm² / Function: battery\nPin: 2 / Colour: black / Size: 2.5 mm² / Function: earth\nPin: 3 / Colour: - / Size: - / Function: not used",
    ],
  ])("%s", (_name, text) => {
    expect(oneChart(text).leads.map(told)).toEqual(rows);
  });

  test("titles and remarks are notes, and a lead's source is its whole block", () => {
    const chart = oneChart(
      "Dash plug of the van Wren\n\nTerminal: A\nWire: RD/WH\nSignal: battery\n\nTerminal: B\nWire: BK\nSignal: earth\n\nNote: seen from behind",
    );
    expect(chart.leads.map(told)).toEqual(["A constant-feed RD/WH", "B ground BK"]);
    expect(chart.leads.map(({ line }) => line)).toEqual([3, 7]);
    expect(chart.leads[0]!.source).toBe("Terminal: A\nWire: RD/WH\nSignal: battery");
    expect(chart.title).toBe("Dash plug of the van Wren");
    expect(chart.notes.map(({ line }) => line)).toEqual([1, 11]);
  });
});
