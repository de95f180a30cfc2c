import { Disclosure } from "./disclosure.tsx";
import { FigureRows } from "./figure-rows.tsx";
import type { BundleRow } from "./whole-model.ts";

/** A run's bundle: its cross-section as it packs, and its figures. */
export function BundleView({ bundle }: { readonly bundle: BundleRow }) {
  return (
    <article className="figures-group" aria-label={bundle.name}>
      <h4>
        {bundle.name}: {bundle.count}
      </h4>
      {bundle.section && <Section bundle={bundle} section={bundle.section} />}
      <FigureRows lines={bundle.lines} />
      <ul className="figures-warnings">
        {bundle.fits.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      {bundle.left.length > 0 && (
        <Disclosure name={`Left out: ${bundle.left.length}`}>
          <ul className="figures-warnings">
            {bundle.left.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </Disclosure>
      )}
    </article>
  );
}

type Drawn = NonNullable<BundleRow["section"]>;

/** Circles as they came to lie, each in its wire's colour with the tracer across it. */
function Section({ bundle, section }: { readonly bundle: BundleRow; readonly section: Drawn }) {
  const radius = section.diameter_mm / 2;
  const line = section.diameter_mm / 150;
  const side = section.diameter_mm * 1.04;
  const width = Math.min(220, Math.max(96, section.diameter_mm * 14));
  return (
    <svg
      className="bundle-section"
      viewBox={`${-side / 2} ${-side / 2} ${side} ${side}`}
      width={width}
      height={width}
      role="img"
      aria-label={`Cross-section of ${bundle.name}: ${bundle.count} in a circle of ${section.diameter_mm.toFixed(1)} mm`}
    >
      <circle r={radius} fill="none" stroke="var(--quiet)" strokeWidth={line} strokeDasharray={line * 4} />
      {section.circles.map(({ index, x_mm, y_mm, diameter_mm, colour, name }) => {
        const r = diameter_mm / 2 - line / 2;
        return (
          <g key={index} transform={`translate(${x_mm} ${y_mm})`}>
            <title>{name}</title>
            <circle
              r={r}
              fill={`var(--wire-${colour?.base ?? "unknown"})`}
              stroke="var(--ink)"
              strokeWidth={line}
            />
            {colour?.tracer && (
              <path
                d={`M${-r * 0.6} ${r * 0.6}L${r * 0.6} ${-r * 0.6}`}
                stroke={`var(--wire-${colour.tracer})`}
                strokeWidth={r * 0.4}
              />
            )}
          </g>
        );
      })}
    </svg>
  );
}
