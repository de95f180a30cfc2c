import { facing } from "../graph/facing.ts";
import type { Cavity, Connector, JobSide } from "../graph/harness.ts";
import type { KeptConnector } from "../graph/own-connector/kept-connector.ts";
import { type Confidence, cavitiesOf, type Pinout, type PinoutGroup } from "./pinouts/pinout.ts";

/** A connector that can be put down as it is: one of the catalogue, or a person's own. Plain data. */
export type Ready = Pick<Connector, "form" | "gender" | "shell" | "keying" | "note" | "chart"> & {
  readonly id: string;
  readonly group: PinoutGroup | "own";
  readonly title: string;
  /** Whose directions and lead colours the cavities give. */
  readonly side: JobSide;
  readonly cavities: readonly Cavity[];
  readonly voltage_V: number | null;
  readonly face: Pick<Connector, "view" | "rows"> | null;
  readonly source: string;
  readonly caution: string;
  /** How sure each cavity is; `null` where nobody has said. */
  readonly confidence: readonly Confidence[] | null;
};

export function readyOfPinout(pinout: Pinout): Ready {
  const { id, group, title, side, form, shell, voltage_V, face, source, edition, caution } = pinout;
  return {
    id,
    group,
    title,
    side,
    form,
    gender: "unknown",
    shell: shell || null,
    keying: null,
    note: "",
    chart: { title, edition, date: "", measured: false },
    cavities: cavitiesOf(pinout, side),
    voltage_V,
    face,
    source: edition ? `${source} Edition: ${edition}.` : source,
    caution,
    confidence: pinout.rows.map((item) => item.confidence),
  };
}

/** @param id by which the keeper knows it */
export function readyOfKept(id: string, kept: KeptConnector): Ready {
  const { name, side, form, gender, shell, keying, note, chart, cavities, view, rows } = kept;
  return {
    id,
    group: "own",
    title: name,
    side,
    form,
    gender,
    shell,
    keying,
    note,
    chart,
    cavities,
    voltage_V: null,
    face: rows.length > 0 ? { view, rows } : null,
    source: sourceOfKept(kept),
    caution: chart?.measured
      ? "It was measured on one vehicle or unit. Another one may be wired otherwise."
      : "It is as its chart says; nobody has noted a measurement. Measure the feeds before plugging in.",
    confidence: null,
  };
}

function sourceOfKept({ chart }: KeptConnector): string {
  const edition = chart?.edition.trim() ? `edition ${chart.edition}` : "";
  const words = chart ? [chart.title, edition, chart.date].filter((text) => text.trim() !== "") : [];
  return words.length > 0 ? `Your own chart: ${words.join(", ")}.` : "Your own chart; it names no source.";
}

/** Its cavities as they are on either side of the job. */
export function readyCavities(ready: Ready, side: JobSide): readonly Cavity[] {
  return side === ready.side ? ready.cavities : facing(ready.cavities);
}
