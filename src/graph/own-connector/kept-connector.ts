import * as z from "zod/mini";
import { facing } from "../facing.ts";
import type { Cavity, Connector, JobSide } from "../harness.ts";
import { connector, side } from "../schema/parts.ts";
import { filledLine, note, object } from "../schema/values.ts";

export const KEPT_CONNECTOR_VERSION = 2;

const { gender, form, shell, keying, view, rows, cavities, chart } = connector.shape;

/** What a `.connector.json` file holds: a connector as it is in any job, without the job. */
export const keptConnectorShape = object({
  format: z.literal("pigtail-connector"),
  formatVersion: z.int().check(z.minimum(1)),
  /** What its owner calls it. */
  name: filledLine,
  note,
  /** Whose directions and lead colours the cavities give. */
  side,
  gender,
  form,
  shell,
  keying,
  view,
  rows,
  cavities,
  chart,
});

/** A person's own connector, kept to be used again. Plain data. */
export type KeptConnector = Pick<
  Connector,
  "note" | "gender" | "form" | "shell" | "keying" | "view" | "rows" | "cavities" | "chart"
> & {
  readonly format: "pigtail-connector";
  readonly formatVersion: number;
  readonly name: string;
  readonly side: JobSide;
};

/**
 * A connector of a harness as one to keep. What belongs to the job alone is left behind: its designation, its box,
 * its mate, what covers it, and which cavities this job leaves spare.
 * @param name not empty, at most 400 characters
 */
export function keepConnector(part: Connector, name: string): KeptConnector {
  return {
    format: "pigtail-connector",
    formatVersion: KEPT_CONNECTOR_VERSION,
    name,
    note: part.note,
    side: part.belongsTo.side,
    gender: part.gender,
    form: part.form,
    shell: part.shell,
    keying: part.keying,
    view: part.view,
    rows: part.rows,
    cavities: part.cavities.map(withoutJob),
    chart: part.chart,
  };
}

function withoutJob(cavity: Cavity): Cavity {
  return cavity.use === "spare" || cavity.use === "plugged" ? { ...cavity, use: "expected" } : cavity;
}

/** Its cavities as they are on either side of the job. */
export function keptCavities(kept: KeptConnector, side: JobSide): readonly Cavity[] {
  return side === kept.side ? kept.cavities : facing(kept.cavities);
}
