import { useEffect, useState } from "react";
import type { Harness } from "../../graph/harness.ts";
import { check } from "../../rules/check.ts";
import { loadExample } from "../../rules/examples/load.ts";
import { nameGroup } from "../../rules/groups.ts";
import type { Finding, Rule } from "../../rules/rule.ts";
import { SeverityMark } from "../findings/severity.tsx";
import { RuleDrawing } from "./rule-drawing.tsx";

type Shown = {
  readonly page: readonly string[];
  readonly trips: Harness;
  readonly quiet: Harness;
  readonly quietBecause: string;
  readonly found: Finding | null;
};

/** The page of one rule: what it holds, why, on whose word, and two drawings. */
export function RulePage(props: { readonly rule: Rule; readonly onOpen: (rule: string) => void }) {
  const { rule } = props;
  const { id, severity, summary, source, group, fixable, brings } = rule.meta;
  const shown = useExample(rule);
  return (
    <article className="rule-page" aria-labelledby="rule-name">
      <h3 id="rule-name">{summary}</h3>
      <p className={`finding-head finding-${severity}`}>
        <SeverityMark severity={severity} />
        <strong>{severity}</strong>
        <span className="finding-place">
          {nameGroup(group)} · <code>{id}</code>
          {fixable ? " · offers a cure" : ""}
        </span>
      </p>
      {shown?.page.map((paragraph) => (
        <p key={paragraph}>{paragraph}</p>
      ))}
      {shown?.found && (
        <section aria-label="An example">
          <h4>Found</h4>
          <RuleDrawing
            name="Drawing of what is found"
            harness={shown.trips}
            label={`A harness in which this is found: ${shown.found.message}`}
          />
          <p className="finding-message">{shown.found.message}</p>
          <p className="finding-quiet">{shown.found.consequence}</p>
          <p>{shown.found.remedy}</p>
        </section>
      )}
      {shown && (
        <section aria-label="What looks like it and is right">
          <h4>Not found</h4>
          <RuleDrawing
            name="Drawing of what is right"
            harness={shown.quiet}
            label={`A harness that looks like it and is right: ${shown.quietBecause}`}
          />
          <p>{shown.quietBecause}</p>
        </section>
      )}
      <h4>Source</h4>
      <p>{source}.</p>
      {brings && brings.length > 0 && (
        <>
          <h4>What may follow from it</h4>
          <p className="rule-links">
            {brings.map((other) => (
              <button
                key={other}
                type="button"
                className="button quiet-button"
                onClick={() => props.onOpen(other)}
              >
                {other}
              </button>
            ))}
          </p>
        </>
      )}
    </article>
  );
}

function useExample(rule: Rule): Shown | null {
  const [shown, setShown] = useState<{ readonly rule: Rule; readonly example: Shown } | null>(null);
  useEffect(() => {
    let gone = false;
    void loadExample(rule).then((example) => {
      if (gone || !example) return;
      const { page, quietBecause } = example;
      const [trips, quiet] = [example.trips(), example.quiet()];
      const found = check(trips).find((finding) => finding.rule === rule.meta.id) ?? null;
      setShown({ rule, example: { page, quietBecause, trips, quiet, found } });
    });
    return () => {
      gone = true;
    };
  }, [rule]);
  return shown?.rule === rule ? shown.example : null;
}
