import { cssInk } from "../canvas/ink-css.ts";
import { legendOf } from "./key-bar-model.ts";
import type { Overlay } from "./readings-store.ts";

/** What the bands mean: each is told by its width and dash, and named. */
export function Legend({ overlay }: { readonly overlay: Overlay }) {
  const { words, bands } = legendOf(overlay);
  return (
    <div className="key-bar-legend">
      {bands.length > 0 && (
        <ul aria-label="Bands">
          {bands.map((band) => (
            <li key={band.words}>
              <svg viewBox="0 0 36 16" width="36" height="16" aria-hidden="true">
                <path
                  d="M0 8H36"
                  stroke={cssInk(band.ink)}
                  strokeOpacity={band.opacity}
                  strokeWidth={band.width}
                  strokeDasharray={band.dash.join(" ")}
                />
                <path d="M0 8H36" stroke="var(--ink)" strokeWidth="4.7" />
                <path d="M0 8H36" stroke="var(--wire-unknown)" strokeWidth="3.2" />
              </svg>
              {band.words}
            </li>
          ))}
        </ul>
      )}
      <span>{words}</span>
    </div>
  );
}
