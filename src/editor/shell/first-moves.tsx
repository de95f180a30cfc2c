import { useEditor } from "../state/use-editor.ts";
import { CommandButton } from "./command-button.tsx";
import "./first-moves.css";

/** What stands on an empty sheet: the first three moves, and the buttons that make them. */
export function FirstMoves() {
  const empty = useEditor(({ history }) => {
    for (const _ in history.present.parts) return false;
    for (const _ in history.present.wires) return false;
    return true;
  });
  if (!empty) return null;
  return (
    <section className="first" aria-labelledby="first-moves">
      <h2 id="first-moves">An empty sheet</h2>
      <ol>
        <li>
          <Housing />
          <div>
            <h3>Put down a connector</h3>
            <p>Take a ready one, paste the rows of its chart, or count its cavities.</p>
          </div>
        </li>
        <li>
          <Joining />
          <div>
            <h3>Drag from contact to contact</h3>
            <p>Two leads of two charts meet in a joint, and each keeps its own colour.</p>
          </div>
        </li>
        <li>
          <Finding />
          <div>
            <h3>Read what is found</h3>
            <p>A loose lead, a swapped pair or a spare without a cap is named as you draw.</p>
          </div>
        </li>
      </ol>
      <div className="first-buttons">
        <CommandButton id="join-charts" className="strong-button">
          Join two charts
        </CommandButton>
        <CommandButton id="new-adapter">New adapter: two connectors</CommandButton>
        <CommandButton id="add-connector">Add a connector</CommandButton>
        <CommandButton id="file-samples">Open a sample</CommandButton>
        <CommandButton id="file-open">Open a file</CommandButton>
      </div>
    </section>
  );
}

function Housing() {
  return (
    <svg viewBox="0 0 48 40" width="48" height="40" aria-hidden="true">
      <path d="M8 4h32v32H8z M8 14h32 M8 22h32 M8 30h32 M16 14v22" className="first-line" />
    </svg>
  );
}

function Joining() {
  return (
    <svg viewBox="0 0 48 40" width="48" height="40" aria-hidden="true">
      <path d="M2 12h16v16h6 M24 28h8V16h14" className="first-line" />
      <circle cx="24" cy="28" r="4" className="first-dot" />
    </svg>
  );
}

function Finding() {
  return (
    <svg viewBox="0 0 48 40" width="48" height="40" aria-hidden="true">
      <path d="M24 5 42 35H6z M24 16v9 M24 29v2" className="first-line" />
    </svg>
  );
}
