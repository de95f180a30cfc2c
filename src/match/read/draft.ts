import type { Direction } from "../../graph/harness.ts";
import type { FunctionReading } from "../chart.ts";

/** What a row gave before the chart is known as a whole. */
export type Draft = {
  readonly line: number;
  readonly source: string;
  readonly label: string | null;
  readonly connector: string;
  readonly colourText: string;
  readonly tracerText: string;
  readonly area_mm2: number | null;
  readonly current_A: number | null;
  readonly fuse_A: number | null;
  readonly directionCell: string;
  readonly direction: Direction;
  readonly text: string;
  readonly reading: FunctionReading;
  readonly isUnused: boolean;
  readonly kept: readonly string[];
};

/** What became of a line of the source. */
export type Fate = "lead" | "note" | "unread" | "head" | "rule" | "continued";
