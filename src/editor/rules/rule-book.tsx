import { useMemo, useState } from "react";
import { rulesFor } from "../../rules/own/rules-for.ts";
import { SeverityMark } from "../findings/severity.tsx";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog, openDialog } from "../shell/dialogs.ts";
import { useEditor } from "../state/use-editor.ts";
import { rulesFound } from "./rule-list-model.ts";
import { RulePage } from "./rule-page.tsx";
import "./rule-book.css";

/** Every rule that the harness is checked by, and the page of the one that is picked. */
export default function RuleBook(props: { readonly rule: string | null }) {
  const settings = useEditor((state) => state.history.present.settings);
  const findings = useEditor((state) => state.derived.findings);
  const [typed, setTyped] = useState("");
  const [picked, setPicked] = useState(props.rule);
  const rules = useMemo(() => rulesFor({ settings }), [settings]);
  const groups = useMemo(() => rulesFound(rules, typed), [rules, typed]);
  const counts = new Map<string, number>();
  for (const { rule, waiver } of findings) if (!waiver) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  const rule = rules.find(({ meta }) => meta.id === picked) ?? null;
  const number = groups.reduce((sum, group) => sum + group.rules.length, 0);
  return (
    <Dialog heading="The rule book" onClose={closeDialog} wide>
      <div className="rule-book" data-picked={rule !== null}>
        <div className="rule-index">
          <div className="rule-search">
            <input
              type="search"
              aria-label="Find a rule"
              placeholder={`Find among ${rules.length} rules`}
              value={typed}
              data-first
              onChange={(event) => setTyped(event.target.value)}
            />
            <button type="button" className="button" onClick={() => openDialog({ kind: "profile" })}>
              Books and limits…
            </button>
          </div>
          <p className="said-only" role="status">
            {typed && `${number} rules`}
          </p>
          {groups.map((group) => (
            <section key={group.id} aria-labelledby={`group-${group.id}`}>
              <h3 id={`group-${group.id}`}>{group.name}</h3>
              <ul>
                {group.rules.map(({ meta }) => (
                  <li key={meta.id}>
                    <button
                      type="button"
                      className="rule-row"
                      aria-current={meta.id === picked || undefined}
                      onClick={() => setPicked(meta.id)}
                    >
                      <SeverityMark severity={meta.severity} size={14} />
                      <span className="said-only">{meta.severity}: </span>
                      <span>{meta.summary}</span>
                      {counts.has(meta.id) && <span className="rule-count">{counts.get(meta.id)} found</span>}
                    </button>
                  </li>
                ))}
              </ul>
            </section>
          ))}
          {number === 0 && <p>No rule holds these words.</p>}
        </div>
        <div className="rule-reading">
          {rule ? (
            <>
              <button type="button" className="button rule-back" onClick={() => setPicked(null)}>
                All rules
              </button>
              <RulePage key={rule.meta.id} rule={rule} onOpen={setPicked} />
            </>
          ) : (
            <p className="finding-quiet">
              Pick a rule to read what it holds, with a drawing of when it speaks.
            </p>
          )}
        </div>
      </div>
    </Dialog>
  );
}
