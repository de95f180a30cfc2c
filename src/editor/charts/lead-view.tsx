import { writeSize } from "../../catalogue/conductors.ts";
import { functionOf } from "../../catalogue/functions.ts";
import type { Settings } from "../../graph/harness.ts";
import type { Lead } from "../../match/chart.ts";
import type { SideName } from "../../match/review/review.ts";
import { sayFunction } from "../../match/review/words.ts";
import { Swatch } from "../shell/swatch.tsx";

/** One lead of a chart: its cavity, what it is for, the chart's own words, its colour with its letters. */
export function LeadView(props: {
  readonly side: SideName;
  readonly lead: Lead;
  readonly sizes: Settings["sizes"];
  /** The key that chooses it, where it is a candidate. */
  readonly number?: number | undefined;
  readonly taken?: boolean;
  /** The function that its joint has settled, where its chart left it open. */
  readonly settled?: string;
}) {
  const { lead, sizes } = props;
  const { settled } = props;
  const words = settled === undefined || settled === "unknown" ? sayFunction(lead) : functionOf(settled).name;
  const isSure = lead.reading.certain || lead.isUnused || words !== sayFunction(lead);
  const isSame = lead.text.toLowerCase() === words.toLowerCase();
  return (
    <span className={`lead lead-${props.side}`}>
      {props.number !== undefined && <kbd className="lead-number">{props.number}</kbd>}
      <b className="lead-name">{lead.name}</b>
      <span className="lead-words">
        <span className={isSure ? undefined : "lead-doubtful"}>{words}</span>
        {lead.text && !isSame && <q>{lead.text}</q>}
        {props.taken && <em>joined already: makes a splice</em>}
      </span>
      <span className="lead-colour">
        {lead.colour ? <Swatch colour={lead.colour} /> : <span className="lead-none">no colour</span>}
        {lead.area_mm2 !== null && <small>{writeSize(lead.area_mm2, sizes)}</small>}
      </span>
    </span>
  );
}
