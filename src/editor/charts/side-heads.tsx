import { useId } from "react";
import type { Connector } from "../../graph/harness.ts";
import type { SideName } from "../../match/review/review.ts";
import type { ChartsDesk } from "./desk.ts";
import type { ChartSide, Need, viewOf } from "./desk-model.ts";

const VIEWS: readonly (readonly [Connector["view"], string])[] = [
  ["mating-face", "the mating face"],
  ["wire-side", "the wire side"],
];

/** Designation, name and the side from which the cavities are seen. */
export function SideHeads(props: {
  readonly name: SideName;
  readonly side: ChartSide;
  readonly seen: ReturnType<typeof viewOf>;
  readonly needs: readonly Need[];
  readonly showNeeds: boolean;
  readonly desk: ChartsDesk;
}) {
  const { name, side, seen, desk } = props;
  const id = useId();
  const isHarness = side.source.kind === "connector";
  const why = (what: Need["what"]) =>
    props.needs.find((need) => need.side === name && need.what === what)?.why ?? "";
  const designationWhy = why("designation");
  return (
    <div className="side-heads">
      <div className="side-fields">
        <label>
          Designation
          <input
            type="text"
            autoComplete="off"
            className="side-designation"
            data-need={`${name}-designation`}
            value={side.designation}
            readOnly={isHarness}
            aria-invalid={designationWhy !== ""}
            aria-describedby={`${id}-designation`}
            onChange={(event) => desk.set(name, { designation: event.target.value })}
          />
        </label>
        <label className="side-name">
          Name
          <input
            type="text"
            autoComplete="off"
            placeholder={name === "left" ? "Radio plug of the van" : "Receiver"}
            value={side.name}
            readOnly={isHarness}
            onChange={(event) => desk.set(name, { name: event.target.value })}
          />
        </label>
      </div>
      <p id={`${id}-designation`} className="field-why" role="alert">
        {designationWhy}
      </p>
      {seen?.from === "leads" ? (
        <p className="side-view-said">Flying leads: there is no face that could be mirrored.</p>
      ) : (
        <fieldset className="side-view" aria-describedby={`${id}-view`}>
          <legend>You see its cavities from</legend>
          {VIEWS.map(([view, words], index) => (
            <button
              key={view}
              type="button"
              className="button"
              data-need={index === 0 ? `${name}-view` : undefined}
              aria-pressed={seen?.view === view}
              aria-disabled={isHarness}
              onClick={() => {
                if (isHarness) return;
                desk.set(name, { view });
                // What was asked is answered: on to what is asked next. Changing one's mind leaves the focus here.
                if (!seen) desk.focusNext();
              }}
            >
              {words}
            </button>
          ))}
          <span className="side-view-said">
            {seen?.from === "chart" && "The chart says so."}
            {seen?.from === "harness" && "As the harness has it."}
          </span>
        </fieldset>
      )}
      <p id={`${id}-view`} className="field-why" role="alert">
        {props.showNeeds ? why("view") : ""}
      </p>
    </div>
  );
}
