import type { Cavity, Connector } from "../../graph/harness.ts";
import { faceRows } from "../../graph/make.ts";
import type { Lead } from "../chart.ts";
import { cavityOf, chartOfConnector, settledFunction } from "./cavities.ts";
import { type Review, type SideName, stateOf } from "./review.ts";

type Changes = { cavities: readonly Cavity[]; rows?: number[][] };

/**
 * What a review changes in the cavities of a connector that the harness has: rows that were mended, functions
 * that a joint settled, rows that were added at the end.
 * @returns `null` where it changes nothing
 */
export function mendedCavities(
  part: Connector,
  review: Review,
  side: SideName,
  partnersOf: (name: string) => readonly Lead[],
): Changes | null {
  const { leads } = review.charts[side];
  const missing = new Set(review.proposal.missing.filter((one) => one.side === side).map((one) => one.lead));
  const before = chartOfConnector(part).leads;
  let changed = false;
  const cavities = leads.map((lead, index): Cavity => {
    const old = part.cavities[index];
    if (!old) {
      changed = true;
      return cavityOf(lead, part.belongsTo.side, partnersOf(lead.name));
    }
    const changes = changesOf(old, before[index]!, lead, partnersOf(lead.name));
    const state = stateOf(review, { side, lead: lead.name });
    if (state === "apart" && old.use === "expected" && !missing.has(lead.name)) changes.use = "optional";
    if (Object.keys(changes).length === 0) return old;
    changed = true;
    return { ...old, ...changes };
  });
  if (!changed) return null;
  if (cavities.length === part.cavities.length) return { cavities };
  return {
    cavities,
    rows: faceRows(cavities.length, Math.max(part.rows.length, Math.ceil(cavities.length / 200))),
  };
}

type CavityChanges = { -readonly [Key in keyof Cavity]?: Cavity[Key] };

/** Only what a person corrected is written: the cavity may know more than a row of a chart can hold. */
function changesOf(old: Cavity, was: Lead, lead: Lead, partners: readonly Lead[]): CavityChanges {
  const changes: CavityChanges = {};
  const differs = (key: keyof Lead) => JSON.stringify(was[key]) !== JSON.stringify(lead[key]);
  if (differs("label") && lead.label) changes.label = lead.label;
  if (differs("text")) changes.text = lead.text;
  if (differs("direction")) changes.direction = lead.direction;
  if (differs("current_A")) changes.current_A = lead.current_A ?? "unknown";
  if (differs("fuse_A")) changes.fuse_A = lead.fuse_A ?? "unknown";
  if (differs("colour") || differs("area_mm2")) {
    const none = lead.colour === null && lead.area_mm2 === null;
    changes.lead = none ? null : { colour: lead.colour, area_mm2: lead.area_mm2 ?? "unknown" };
  }
  const settled = settledFunction(lead, partners);
  const wasCertain = was.reading.certain && !differs("reading") && !differs("isUnused");
  if (!wasCertain && settled !== old.function && (settled !== "unknown" || lead.reading.certain))
    changes.function = settled;
  return changes;
}
