import { useEffect, useRef, useState } from "react";
import { useStore } from "zustand";
import { useEditor } from "../state/use-editor.ts";
import { partFindings, withFollowing } from "./findings-model.ts";
import { FindingsTools } from "./findings-tools.tsx";
import { OneFinding } from "./one-finding.tsx";
import { standing } from "./standing.ts";
import "./findings.css";

/** However many there are, this many are drawn at once; the rest follow on asking. */
const PAGE = 60;

/** What was found, the most hurtful first; then what a person has let stand, with the reason. */
export function FindingsList() {
  const findings = useEditor((state) => state.derived.findings);
  const isChecked = useEditor((state) => state.derived.checked !== null);
  const empty = useEditor((state) => Object.keys(state.history.present.parts).length === 0);
  const at = useStore(standing, ({ key }) => key);
  const [most, setMost] = useState(PAGE);
  const list = useRef<HTMLDivElement>(null);
  const { open, waived } = partFindings(findings);
  const roots = withFollowing(open);
  const place = roots.findIndex(({ finding }) => finding.key === at);
  useEffect(() => {
    if (at && place >= 0)
      list.current?.querySelector(`[data-key="${CSS.escape(at)}"]`)?.scrollIntoView({ block: "nearest" });
  }, [at, place]);
  const shown = Math.max(most, place + 1);
  return (
    <div className="findings" ref={list}>
      <FindingsTools open={open} />
      {open.length === 0 && (
        <p className="findings-calm">
          {empty
            ? "What is found in the harness will stand here, the most harmful first."
            : !isChecked
              ? "The rules are being fetched."
              : waived.length
                ? "Nothing is wrong but what has been waived."
                : "Nothing is wrong with what is drawn."}
        </p>
      )}
      <ul className="findings-list">
        {roots.slice(0, shown).map(({ finding, following }) => (
          <OneFinding
            key={finding.key}
            finding={finding}
            following={following}
            isCurrent={finding.key === at}
          />
        ))}
      </ul>
      {roots.length > shown && (
        <button type="button" className="button" onClick={() => setMost(shown + PAGE)}>
          Show {Math.min(PAGE, roots.length - shown)} more of {roots.length - shown}
        </button>
      )}
      {waived.length > 0 && (
        <section aria-labelledby="waived">
          <h2 id="waived">Waived ({waived.length})</h2>
          <ul className="findings-list">
            {waived.map((finding) => (
              <OneFinding key={finding.key} finding={finding} following={[]} isCurrent={false} />
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}
