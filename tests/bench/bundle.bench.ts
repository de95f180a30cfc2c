import { bundleDiameter } from "../../src/electrical/bundle/bundle-diameter.ts";
import { packCircles } from "../../src/electrical/bundle/pack/pack.ts";
import { seeded } from "../../src/electrical/bundle/pack/random.ts";

const WIRES_mm = [1.4, 1.7, 1.9, 2.1, 2.4, 3, 3.7, 4.3, 6];

/** Packing mixes of vehicle wires of several sizes: how long, and how near to the area of the wires. */
export async function bench(): Promise<string[]> {
  const lines: string[] = [];
  for (const count of [5, 10, 20, 37, 60, 100, 200, 300, 400, 1000, 2000]) {
    const random = seeded(count);
    const wires = Array.from({ length: count }, () => WIRES_mm[Math.floor(random() ** 2 * WIRES_mm.length)]!);
    const times: number[] = [];
    for (let round = 0; round < (count > 400 ? 3 : 11); round++) {
      const start = performance.now();
      packCircles(wires);
      times.push(performance.now() - start);
    }
    times.sort((a, b) => a - b);
    const { packed, rule } = bundleDiameter(wires);
    const reached = "value" in packed ? `${packed.value.toFixed(1)} mm` : "not packed";
    lines.push(
      `${count} wires: median ${times[times.length >> 1]!.toFixed(1)} ms, longest ${times.at(-1)!.toFixed(1)} ms; ${reached}, rule of thumb ${rule.value.toFixed(1)} mm`,
    );
  }
  return lines;
}
