import { writeSize } from "../catalogue/conductors.ts";
import { isKnown } from "../electrical/figure.ts";
import { bundlesOf, type RunBundle } from "../electrical/operate/bundles.ts";
import { type Lengths, lengthsOf } from "../electrical/operate/lengths.ts";
import { nameIn } from "../electrical/operate/operate.ts";
import type { Harness } from "../graph/harness.ts";
import { trace } from "../graph/trace.ts";
import { readArguments } from "./arguments.ts";
import { byName, inColumns, rounded } from "./columns.ts";
import { fileName, readHarness } from "./files.ts";
import { count, EXIT, plain, say } from "./unusable.ts";

export const usage = "pigtail bundle FILE [--json]";

/** How thick each run's bundle is, what goes round it, and what to cut each wire to. */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    { json: { type: "boolean" } },
    { usage, least: 1, most: 1 },
  );
  const [path] = positionals as [string];
  const harness = readHarness(path).harness;
  const bundles = bundlesOf(harness, trace(harness));
  const lengths = lengthsOf(harness);
  if (values.json) say(JSON.stringify(report(harness, bundles, lengths)));
  else say(inWords(harness, bundles, lengths, fileName(path)));
  return EXIT.clean;
}

const nameOfRun = (harness: Harness, { run }: RunBundle) => harness.runs[run]?.designation ?? run;

/** What `--json` prints. The shape is kept from version to version. */
function report(harness: Harness, bundles: readonly RunBundle[], lengths: Lengths) {
  const name = nameIn(harness);
  return {
    runs: byName(
      bundles.map((bundle) => [
        nameOfRun(harness, bundle),
        bundle.run,
        {
          wires: bundle.wires.map(name),
          unknown: bundle.unknown.map(({ wire, why }) => ({ wire: name(wire), why })),
          diameterMm: bundle.diameter ? rounded(bundle.diameter.reckoned.value) : null,
          packedMm:
            bundle.diameter && isKnown(bundle.diameter.packed) ? rounded(bundle.diameter.packed.value) : null,
          ruleOfThumbMm: bundle.diameter ? rounded(bundle.diameter.rule.value) : null,
          covering: bundle.covering?.ok ? bundle.covering.covering.name : null,
          grommet: bundle.grommet?.ok ? bundle.grommet.covering.name : null,
          heatShrink: bundle.heatShrink?.name ?? null,
          massGrams: bundle.mass ? rounded(bundle.mass.value) : null,
          bendRadiusMm: bundle.bendRadius ? rounded(bundle.bendRadius.value) : null,
        },
      ]),
    ),
    lengths: byName(
      lengths.wires.map(({ wire, cut, cost }) => [
        name(wire),
        wire,
        { cutMetres: "unknown" in cut ? null : rounded(cut.value), cost: cost ? rounded(cost.value) : null },
      ]),
    ),
    bySize: lengths.bySize.map(({ area_mm2, total_m, count: wires }) => ({
      mm2: area_mm2 === "unknown" ? null : rounded(area_mm2),
      metres: rounded(total_m),
      wires,
    })),
    totalMetres: rounded(lengths.total_m),
    cost: lengths.cost === null ? null : rounded(lengths.cost),
    currency: harness.settings.electrical.currency,
  };
}

function inWords(harness: Harness, bundles: readonly RunBundle[], lengths: Lengths, file: string): string {
  const name = nameIn(harness);
  const lines = [`${plain(file)}: ${count(bundles.length, "run")}, ${count(lengths.wires.length, "wire")}`];
  const table = (title: string, head: readonly string[], rows: readonly (readonly string[])[]) => {
    if (rows.length)
      lines.push(
        "",
        title,
        ...inColumns(
          head,
          rows.map((row) => row.map(plain)),
        ),
      );
  };
  table(
    "Runs",
    ["", "wires", "mm", "packed", "rule", "g", "bend mm", "goes in"],
    bundles.map((bundle) => [
      nameOfRun(harness, bundle),
      String(bundle.wires.length),
      bundle.diameter ? bundle.diameter.reckoned.value.toFixed(1) : "–",
      bundle.diameter && isKnown(bundle.diameter.packed) ? bundle.diameter.packed.value.toFixed(1) : "–",
      bundle.diameter ? bundle.diameter.rule.value.toFixed(1) : "–",
      bundle.mass ? bundle.mass.value.toFixed(0) : "–",
      bundle.bendRadius ? bundle.bendRadius.value.toFixed(0) : "–",
      goesIn(bundle),
    ]),
  );
  const unknown = bundles.flatMap((bundle) =>
    bundle.unknown.map(({ wire, why }) => `  ${plain(name(wire))}: ${plain(why)}`),
  );
  if (unknown.length) lines.push("", "Left out of their runs", ...unknown);
  table(
    "To be cut",
    ["", "m", "cost"],
    lengths.wires.map(({ wire, cut, cost }) => [
      name(wire),
      "unknown" in cut ? "–" : cut.value.toFixed(2),
      cost ? cost.value.toFixed(2) : "–",
    ]),
  );
  table(
    "Of each size",
    ["", "wires", "m"],
    lengths.bySize.map(({ area_mm2, total_m, count: wires }) => [
      writeSize(area_mm2, harness.settings.sizes) || "size not stated",
      String(wires),
      total_m.toFixed(2),
    ]),
  );
  if (lengths.cost !== null)
    lines.push(
      "",
      `Wire: ${lengths.cost.toFixed(2)} ${plain(harness.settings.electrical.currency)}`.trimEnd(),
    );
  return lines.join("\n");
}

function goesIn({ covering, grommet, heatShrink }: RunBundle): string {
  const choices = [covering, grommet].flatMap((choice) =>
    choice ? [choice.ok ? choice.covering.name : choice.why] : [],
  );
  const shrink = heatShrink ? [`heat-shrink ${heatShrink.name}`] : [];
  return [...choices, ...shrink].join("; ");
}
