import { writeColour } from "../catalogue/colours.ts";
import { functionOf } from "../catalogue/functions.ts";
import { cavitiesOf, type Pinout } from "../catalogue/pinouts.ts";
import { type Ready, readyCavities } from "../catalogue/ready.ts";
import type { Cavity, Connector, JobSide } from "../graph/harness.ts";
import type { Chart, FunctionReading, Lead } from "./chart.ts";

/** A pinout of the catalogue as a chart, as it is on one side of the job. A disputed row is left to be asked. */
export function pinoutChart(pinout: Pinout, side: JobSide): Chart {
  const cavities = cavitiesOf(pinout, side);
  return chartOf(pinout.title, cavities, "note", (index) => pinout.rows[index]!.confidence !== "disputed");
}

/** A ready connector, of the catalogue or a person's own, as a chart. */
export function readyChart(ready: Ready, side: JobSide): Chart {
  const { confidence } = ready;
  const words = confidence ? "note" : "wording";
  return chartOf(
    ready.title,
    readyCavities(ready, side),
    words,
    (index) => confidence?.[index] !== "disputed",
  );
}

/** A connector that stands in a harness as a chart: its functions are settled, so they are read as certain. */
export function connectorChart(part: Connector): Chart {
  return chartOf(part.chart?.title || part.name || part.designation, part.cavities, "wording", () => true);
}

/** A cavity's text is a chart's own wording, or in the catalogue a note beside the function. */
type Words = "wording" | "note";

function chartOf(
  title: string,
  cavities: readonly Cavity[],
  words: Words,
  isSure: (index: number) => boolean,
): Chart {
  return {
    title,
    leads: cavities.map((cavity, index) => leadOf(cavity, index, words, isSure(index))),
    notes: [],
    unread: [],
  };
}

function leadOf(cavity: Cavity, index: number, words: Words, sure: boolean): Lead {
  const means = functionOf(cavity.function);
  const name = means.id === "unknown" ? "" : means.name;
  const isNote = words === "note" && name !== "";
  const colour = cavity.lead?.colour ?? null;
  const known = (value: number | "unknown" | null | undefined) => (typeof value === "number" ? value : null);
  return {
    name: cavity.label,
    label: cavity.label,
    text: isNote ? name : cavity.text || name,
    reading: readingOf(means.id, sure),
    colour,
    colourText: writeColour(colour),
    area_mm2: known(cavity.lead?.area_mm2),
    current_A: known(cavity.current_A),
    fuse_A: known(cavity.fuse_A),
    direction: cavity.direction,
    isUnused: means.id === "not-used",
    kept: isNote && cavity.text ? [cavity.text] : [],
    line: index + 1,
    source: [cavity.label, means.name, writeColour(colour), cavity.text].filter((part) => part).join(", "),
  };
}

/** A function that a person or the catalogue has named needs no guessing. */
function readingOf(id: string, sure: boolean): FunctionReading {
  if (id === "unknown") return { candidates: [], certain: false };
  return { candidates: [{ function: id, share: 1 }], certain: sure };
}
