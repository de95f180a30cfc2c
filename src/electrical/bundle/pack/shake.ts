import { type Layout, reach } from "./layout.ts";
import { squeeze } from "./squeeze.ts";

/** Soft to begin with, so that what was set down anew finds its way in among the others. */
const STIFFNESS = [0.3, 3, 30, 1_000, 100_000] as const;

/**
 * Tries to better a packing: takes one of the outermost circles and sets it down elsewhere inside, or lets a thick and
 * a thin one change places, and draws all together again. Keeps what is better.
 * @param random 0 to 1; the same row gives the same answer
 */
export function shake(best: Layout, tries: number, steps: number, random: () => number): Layout {
  let kept = best;
  let least = reach(kept);
  for (let k = 0; k < tries; k++) {
    const tried = squeeze(disturb(kept, least, random), steps, STIFFNESS);
    const radius = reach(tried);
    if (radius < least * (1 - 1e-7)) {
      kept = tried;
      least = radius;
    }
  }
  return kept;
}

function disturb(from: Layout, radius: number, random: () => number): Layout {
  const x = from.x.slice();
  const y = from.y.slice();
  const { r } = from;
  const n = r.length;
  const one = outermost(from, Math.floor(random() * Math.min(n, 1 + n / 3)));
  const other = Math.floor(random() * n);
  if (r[one] !== r[other] && random() < 0.5) {
    [x[one], x[other]] = [x[other]!, x[one]!];
    [y[one], y[other]] = [y[other]!, y[one]!];
    return { x, y, r };
  }
  const angle = 2 * Math.PI * random();
  const away = radius * Math.sqrt(random()) * 0.9;
  x[one] = away * Math.cos(angle);
  y[one] = away * Math.sin(angle);
  return { x, y, r };
}

/** The circle that reaches out furthest but for `skip` others. */
function outermost({ x, y, r }: Layout, skip: number): number {
  const order = Array.from(r, (radius, i) => ({ i, out: Math.hypot(x[i]!, y[i]!) + radius }));
  order.sort((a, b) => b.out - a.out || a.i - b.i);
  return order[skip]!.i;
}
