import type { Readings } from "../../../electrical/operate/readings.ts";
import type { PartId, WireId } from "../../../graph/harness.ts";
import type { About } from "../../../rules/rule.ts";
import { ShowLink } from "./figure-rows.tsx";

/** What to know about a state before its figures are believed. */
export function Warnings({ readings }: { readonly readings: Readings }) {
  const { warnings } = readings;
  if (warnings.length === 0) return null;
  const { parts } = readings.solved.harness;
  const aboutOf = (ids: readonly (PartId | WireId)[]): readonly About[] =>
    ids.map((id) => (id in parts ? { part: id as PartId } : { wire: id as WireId }));
  return (
    <section className="figures-group">
      <h3>To know about this state</h3>
      <ul className="figures-warnings">
        {warnings.map((warning) => (
          <li key={warning.words}>
            {warning.about.length === 0 ? (
              warning.words
            ) : (
              <ShowLink about={aboutOf(warning.about)}>{warning.words}</ShowLink>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
