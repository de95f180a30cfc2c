import { isKnown } from "../../../electrical/figure.ts";
import { blowTime } from "../../../electrical/fuse/blow-time.ts";
import type { Readings } from "../../../electrical/operate/readings.ts";
import type { ShortCircuit } from "../../../electrical/operate/short.ts";
import type { WireId } from "../../../graph/harness.ts";
import type { FigureLine } from "./figure-line.ts";

export type ShortView = {
  readonly verdict: string;
  readonly lines: readonly FigureLine[];
  readonly wires: readonly {
    readonly wire: WireId;
    readonly name: string;
    readonly verdict: string;
    readonly why: string;
  }[];
};

const VERDICT: Readonly<Record<ShortCircuit["verdict"], string>> = {
  clears: "The fuse clears it.",
  overheats: "A wire overheats first.",
  "not proven": "Not proven.",
  "no fuse": "No fuse protects it.",
  "nothing flows": "Nothing flows.",
};

/** A short circuit as figures and rows. */
export function shortView(readings: Readings, short: ShortCircuit): ShortView {
  const { harness } = readings.solved;
  const lines: FigureLine[] = [{ id: "fault", name: "Current of the fault", answer: short.current }];
  const blade = short.fuse?.blade;
  if (blade && isKnown(short.current)) {
    const time = blowTime(blade, short.current.value);
    const { most_s } = time.promised;
    lines.push({
      id: "opens",
      name: `${short.fuse!.name} has opened by`,
      answer:
        most_s === "unknown"
          ? { unknown: `its table promises no time: ${time.formula}` }
          : {
              value: most_s,
              unit: "s",
              formula: time.formula,
              table: time.table,
              source: time.source,
              doubt: time.doubt,
            },
    });
  }
  return {
    verdict: VERDICT[short.verdict],
    lines,
    wires: short.wires.map(({ wire, check, why }) => ({
      wire,
      name: harness.wires[wire]!.designation,
      verdict: check?.verdict ?? "not known",
      why,
    })),
  };
}
