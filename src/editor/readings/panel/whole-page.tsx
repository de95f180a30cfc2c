import { memo } from "react";
import type { Readings } from "../../../electrical/operate/readings.ts";
import type { PartId } from "../../../graph/harness.ts";
import { useEditorStore } from "../../state/use-editor.ts";
import { goToField } from "./basis.tsx";
import { BudgetTable } from "./budget-table.tsx";
import { BundleView } from "./bundle-view.tsx";
import { Channel } from "./channel.tsx";
import { Disclosure } from "./disclosure.tsx";
import { FigureRows, ShowLink } from "./figure-rows.tsx";
import { LengthTables } from "./length-tables.tsx";
import { ShortAsk } from "./short-circuit.tsx";
import { useSurvey } from "./use-survey.ts";
import type { WholeView } from "./whole-model.ts";

/** What is to be said of the harness as a whole. */
export function WholePage({ readings }: { readonly readings: Readings }) {
  const { answer, busy } = useSurvey("whole");
  const view = answer?.whole;
  return (
    <>
      <h2>The whole harness {busy && <span className="figures-quiet">being worked out</span>}</h2>
      {answer?.problem && <p role="alert">{answer.problem}</p>}
      <Disclosure name="Drop of every load">
        <BudgetTable readings={readings} />
      </Disclosure>
      <Disclosure name="Short circuit at a point">
        <ShortAsk readings={readings} />
      </Disclosure>
      {view && <Surveyed view={view} />}
    </>
  );
}

/** What no key position and no what-if changes: a moving slider does not draw it again. */
const Surveyed = memo(function Surveyed({ view }: { readonly view: WholeView }) {
  return (
    <>
      <Disclosure name="Drain with the key off">
        <StandbyView standby={view.standby} />
      </Disclosure>
      <Disclosure name="Fuses one behind another">
        <Branches view={view} />
      </Disclosure>
      <Disclosure name="Turn-on leads">
        {view.turnOns.length === 0 ? (
          <p className="figures-quiet">No output of the harness only says "on".</p>
        ) : (
          <FigureRows lines={view.turnOns} />
        )}
      </Disclosure>
      <Disclosure name="Speakers">
        {view.channels.length === 0 ? (
          <p className="figures-quiet">No contact of the harness gives speaker level.</p>
        ) : (
          view.channels.map((channel) => <Channel key={channel.id} channel={channel} />)
        )}
      </Disclosure>
      <Disclosure name="Bundles by run">
        {view.bundles.length === 0 ? (
          <p className="figures-quiet">
            The harness has no runs yet. Add them in the details of the harness, and say in the details of
            each wire which it follows.
          </p>
        ) : (
          view.bundles.map((bundle) => <BundleView key={bundle.id} bundle={bundle} />)
        )}
      </Disclosure>
      <Disclosure name="Lengths and cost">
        <LengthTables lengths={view.lengths} />
      </Disclosure>
    </>
  );
});

function StandbyView({ standby }: { readonly standby: WholeView["standby"] }) {
  const editor = useEditorStore();
  return (
    <>
      <p>
        <strong>{standby.verdict}</strong>
      </p>
      <FigureRows lines={standby.lines} />
      {!standby.hasBattery && (
        <p className="figures-quiet">
          No battery is drawn: draw it with its ampere-hours, and its days are told.
        </p>
      )}
      <p className="assumption-links">
        {(
          [
            ["standbyLimit_mA", "State what it may draw"],
            ["chargeFloor_percent", "State the charge to keep"],
          ] as const
        ).map(([field, label]) => (
          <button
            key={field}
            type="button"
            className="figures-link"
            onClick={() => goToField(editor, "harness", field)}
          >
            {label}
          </button>
        ))}
      </p>
      {standby.rows.length > 0 && (
        <div className="figures-table-place">
          <table className="figures-table">
            <caption>What draws, the most first</caption>
            <thead>
              <tr>
                <th scope="col">Part</th>
                <th scope="col" className="figures-number">
                  Draws
                </th>
              </tr>
            </thead>
            <tbody>
              {standby.rows.map((row) => (
                <tr key={row.name}>
                  <th scope="row">
                    <ShowLink about={[{ part: row.part as PartId }]}>{row.name}</ShowLink>
                  </th>
                  <td className="figures-number">{row.drain}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </>
  );
}

function Branches({ view }: { readonly view: WholeView }) {
  if (view.branches.length === 0)
    return <p className="figures-quiet">No fuse stands behind another on the way of a load that draws.</p>;
  return (
    <div className="figures-table-place">
      <table className="figures-table">
        <caption className="said-only">Which of two fuses opens first</caption>
        <thead>
          <tr>
            <th scope="col">Verdict</th>
            <th scope="col">Why</th>
          </tr>
        </thead>
        <tbody>
          {view.branches.map((branch) => (
            <tr key={branch.id}>
              <th scope="row">{branch.verdict}</th>
              <td>
                <ShowLink about={branch.about}>{branch.words}</ShowLink>
                {branch.source && <p className="figures-quiet">Source: {branch.source}.</p>}
                {branch.doubt && <p className="figures-quiet">Doubt: {branch.doubt}.</p>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
