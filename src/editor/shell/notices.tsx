import { useEffect, useState } from "react";
import type { Notice } from "../state/store.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";

const SHOWN_FOR_MS = 6000;
const KEPT = 30;

/** What the editor last said: a short line that goes by itself, and a log of the last few. */
export function Notices() {
  const editor = useEditorStore();
  const notice = useEditor((state) => state.notice);
  const [log, setLog] = useState<readonly Notice[]>([]);
  const [open, setOpen] = useState(false);
  useEffect(() => {
    if (!notice) return;
    setLog((before) => (before[0] === notice ? before : [notice, ...before].slice(0, KEPT)));
    const timer = setTimeout(() => {
      if (editor.getState().notice === notice) editor.getState().set({ notice: null });
    }, SHOWN_FOR_MS);
    return () => clearTimeout(timer);
  }, [notice, editor]);
  return (
    <div className="notices">
      <div role="status" className="notice-place">
        {notice?.tone === "said" && <p className="notice">{notice.text}</p>}
      </div>
      <div role="alert" className="notice-place">
        {notice?.tone === "refused" && <p className="notice notice-refused">{notice.text}</p>}
      </div>
      {log.length > 0 && (
        <button
          type="button"
          className="button quiet-button small-button"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          Said earlier
        </button>
      )}
      {open && (
        <section className="notice-log" aria-label="Said earlier">
          <ul>
            {log.map((entry) => (
              <li key={entry.at + entry.text}>
                <time>{new Date(entry.at).toLocaleTimeString("en-GB")}</time> {entry.text}
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}
