import { useEffect, useRef, useState } from "react";
import type { Finding } from "../../rules/rule.ts";
import { useEditor } from "../state/use-editor.ts";
import { sayChange } from "./findings-model.ts";

/** Findings come and go while a person types; what is said waits until they pause. */
const PAUSE_MS = 1200;

/** Says politely, to those who do not see the list, what was found and what is gone. */
export function SaidFindings() {
  const findings = useEditor((state) => state.derived.findings);
  const documentKey = useEditor((state) => state.documentKey);
  const said = useRef<{ key: number; findings: readonly Finding[] }>({ key: documentKey, findings });
  const [words, setWords] = useState("");
  useEffect(() => {
    const timer = setTimeout(() => {
      const before = said.current.key === documentKey ? said.current.findings : [];
      const change = sayChange(before, findings);
      said.current = { key: documentKey, findings };
      if (change) setWords(change);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [findings, documentKey]);
  return (
    <p className="said-only" role="status">
      {words}
    </p>
  );
}
