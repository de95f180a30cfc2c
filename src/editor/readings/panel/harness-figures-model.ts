import { digits } from "../../../electrical/figure.ts";
import { nameIn } from "../../../electrical/operate/operate.ts";
import type { Readings } from "../../../electrical/operate/readings.ts";
import type { Wire, WireId } from "../../../graph/harness.ts";
import { type FigureGroup, type FigureLine, sayAmps, sayFigure, solved } from "./figure-line.ts";

/** What is to be said of the whole harness in one state. */
export function figuresOfHarness(readings: Readings): readonly FigureGroup[] {
  const { harness, built } = readings.solved;
  if (Object.keys(harness.parts).length === 0) return [];
  const gives = [...readings.sources].filter(([, source]) => source.amps > 1e-6);
  const amps = gives.reduce((sum, [, source]) => sum + source.amps, 0);
  const heat_W = [...readings.wires.values()].reduce((sum, wire) => sum + wire.watts, 0);
  const lines: FigureLine[] = [
    {
      id: "battery",
      name: "Volts of the battery",
      answer: {
        ...solved(built.battery_V, "V", `${digits(built.battery_V)} V at its posts in this state`),
        source: "the harness's settings, or what is usual; see what was taken for granted",
      },
    },
    {
      id: "given",
      name: "Current given, by all sources",
      answer: solved(
        amps,
        "A",
        gives.length === 0
          ? "nothing flows"
          : `${gives.map(([key, source]) => `${sayAmps(source.amps)} ${nameIn(harness)(key.split("#")[0]!)}`).join(" + ")} = ${digits(amps)} A`,
      ),
    },
    {
      id: "heat",
      name: "Turned into heat by the wires",
      answer: solved(heat_W, "W", `Σ ΔU · I over ${readings.wires.size} wires = ${digits(heat_W)} W`),
    },
    ...worstLines(readings),
  ];
  return [{ heading: "In this state", lines }];
}

function worstLines(readings: Readings): readonly FigureLine[] {
  const { harness } = readings.solved;
  const lines: FigureLine[] = [];
  const fullest = worst(readings, (id) => readings.wires.get(id)?.percentOfAmpacity ?? 0);
  if (fullest) {
    const reading = readings.wires.get(fullest.wire.id)!;
    lines.push({
      id: "fullest",
      name: "Fullest wire",
      remark: fullest.wire.designation,
      about: [{ wire: fullest.wire.id }],
      answer: solved(
        fullest.value,
        "% of its ampacity",
        `${fullest.wire.designation} carries ${sayAmps(reading.amps)}; select it for the book that says what it may carry`,
      ),
    });
  }
  const longest = worst(readings, (id) => readings.wires.get(id)?.drop_V ?? 0);
  if (longest) {
    const reading = readings.wires.get(longest.wire.id)!;
    const figure = solved(
      reading.drop_V,
      "V",
      `${longest.wire.designation} loses ${sayFigure({ value: reading.drop_V, unit: "V" })} at ${sayAmps(reading.amps)}, the most of ${Object.keys(harness.wires).length} wires`,
    );
    lines.push({
      id: "steepest",
      name: "Largest drop in one wire",
      remark: longest.wire.designation,
      about: [{ wire: longest.wire.id }],
      answer: figure,
    });
  }
  return lines;
}

function worst(
  readings: Readings,
  amountOf: (id: WireId) => number,
): { readonly wire: Wire; readonly value: number } | null {
  let found: { wire: Wire; value: number } | null = null;
  for (const wire of Object.values(readings.solved.harness.wires)) {
    const value = amountOf(wire.id);
    if (value > 1e-9 && value > (found?.value ?? 0)) found = { wire, value };
  }
  return found;
}
