import { writeSize } from "../catalogue/conductors.ts";
import { nameContact } from "../catalogue/describe.ts";
import { isKnown } from "../electrical/figure.ts";
import { channelsOf } from "../electrical/operate/channels.ts";
import { dropOf } from "../electrical/operate/drop.ts";
import { sayState } from "../electrical/operate/key-state.ts";
import { nameIn } from "../electrical/operate/operate.ts";
import { type HarnessSizing, sizeHarness } from "../electrical/operate/size-harness.ts";
import { standbyOf } from "../electrical/operate/standby.ts";
import { turnOnsOf } from "../electrical/operate/turn-on.ts";
import { apply } from "../graph/edits/apply.ts";
import type { Harness } from "../graph/harness.ts";
import { serialise } from "../graph/parse/parse.ts";
import { type Traced, trace } from "../graph/trace.ts";
import { readArguments } from "./arguments.ts";
import { byName, inColumns, rounded } from "./columns.ts";
import { fileName, mustBeNew, readHarness, writeWhole } from "./files.ts";
import { count, EXIT, plain, say, Unusable } from "./unusable.ts";

export const usage = "pigtail size FILE [--json] [--shrink] [-o OUT [--force]]";

/** Sizes wires and fuses for all that a harness has to bear, and says what else follows from its currents. */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    {
      json: { type: "boolean" },
      shrink: { type: "boolean" },
      output: { type: "string", short: "o" },
      force: { type: "boolean" },
    },
    { usage, least: 1, most: 1 },
  );
  const [path] = positionals as [string];
  const harness = readHarness(path).harness;
  if (values.output !== undefined && !values.force) mustBeNew(values.output);
  const traced = trace(harness);
  const sizing = sizeHarness(harness, traced, {}, values.shrink ?? false);
  if (values.output === "-" && !values.json) {
    writeWhole("-", serialise(sized(harness, sizing)));
    return EXIT.clean;
  }
  if (values.json) say(JSON.stringify(report(harness, traced, sizing)));
  else say(inWords(harness, traced, sizing, fileName(path)));
  if (values.output !== undefined) writeWhole(values.output, serialise(sized(harness, sizing)));
  return EXIT.clean;
}

/** The harness with everything put right that sizes and ratings put right. */
function sized(harness: Harness, { edit }: HarnessSizing): Harness {
  if (!edit) return harness;
  const result = apply(harness, edit);
  if (!result.ok) throw new Unusable(`The sizes could not be put in: ${result.why}.`);
  return result.harness;
}

/** What `--json` prints. The shape is kept from version to version. */
function report(harness: Harness, traced: Traced, sizing: HarnessSizing) {
  const name = nameIn(harness);
  const standby = standbyOf(harness, traced);
  return {
    wires: byName(
      sizing.wires.map((one) => [
        name(one.wire),
        one.wire,
        {
          amps: rounded(one.current_A),
          allowedDropVolts: one.allowed_V === null ? null : rounded(one.allowed_V),
          statedMm2: one.stated_mm2 === "unknown" ? null : one.stated_mm2,
          smallestMm2: one.sized.ok ? rounded(one.sized.size.area_mm2) : null,
          smallest: one.sized.ok ? one.sized.size.name : null,
          decidedBy: one.sized.ok ? one.sized.decidedBy : null,
          verdict: one.verdict,
          why: one.why,
        },
      ]),
    ),
    fuses: byName(
      sizing.fuses.map((one) => [
        name(one.fuse),
        one.fuse,
        {
          loadAmps: rounded(one.load_A),
          statedAmps: one.stated_A === "unknown" ? null : one.stated_A,
          ratingAmps: one.choice?.ok ? one.choice.blade.rating_A : null,
          colour: one.choice?.ok ? one.choice.blade.colour : null,
          mostAmps: one.choice?.ok ? one.choice.most_A : null,
          weakestWire: one.weakest ? name(one.weakest.wire) : null,
          grow: one.grow.map(({ wire, area_mm2 }) => ({ wire: name(wire), toMm2: rounded(area_mm2) })),
          why: one.why,
        },
      ]),
    ),
    branches: sizing.branches.map((one) => ({
      upper: one.upper.includes("#")
        ? nameContact(harness, one.upper as `${string}#${number}`)
        : name(one.upper),
      lower: name(one.lower),
      verdict: one.coordination?.verdict ?? null,
      why: one.why,
    })),
    drops: drops(sizing).map(({ words, budget, state }) => ({
      words,
      dropVolts: rounded(budget.total_V),
      limitVolts: rounded(budget.limit_V),
      within: budget.within,
      state,
    })),
    standby: {
      totalMilliamps: rounded(standby.total.value),
      limitMilliamps: rounded(standby.limit.value),
      within: standby.within,
      drains: standby.drains.map((one) => ({ name: one.name, milliamps: rounded(one.drain_mA) })),
      days: standby.days.map(({ battery, days }) => ({
        battery: name(battery),
        days: isKnown(days) ? rounded(days.value) : null,
      })),
    },
    turnOn: turnOnsOf(sizing.design).map(({ output, check }) => ({
      output: nameContact(harness, output),
      totalMilliamps: rounded(check.total.value),
      within: check.within,
      why: check.why,
    })),
    channels: channelsOf(harness, traced)
      .filter(({ load }) => load !== null)
      .map((one) => ({
        output: one.name,
        ohms: rounded(one.load!.seen.value),
        belowLeast: one.load!.belowLeast,
        speakers: one.speakers.map((speaker) => ({
          name: name(speaker.speaker),
          reversed: speaker.reversed,
          levelDecibels: rounded(speaker.loss.level.value),
          watts: rounded(speaker.power.value),
        })),
        trouble: one.trouble,
      })),
    unmet: sizing.unmet,
  };
}

/** The budget of each load in the state in which it draws most; what is overdrawn first. */
function drops({ design }: HarnessSizing) {
  return [...design.paths]
    .flatMap(([load, { readings }]) => {
      const drop = dropOf(readings, load);
      return drop ? [{ ...drop, state: sayState(readings.state, design.harness) }] : [];
    })
    .sort((a, b) => b.budget.total_V / b.budget.limit_V - a.budget.total_V / a.budget.limit_V);
}

const VERDICTS = {
  keep: "as it needs, or more",
  grow: "too thin",
  state: "not stated",
  none: "no size does",
} as const;

function inWords(harness: Harness, traced: Traced, sizing: HarnessSizing, file: string): string {
  const name = nameIn(harness);
  const { sizes } = harness.settings;
  const bad = sizing.wires.filter(({ verdict }) => verdict !== "keep");
  const lines = [
    `${plain(file)}: ${count(sizing.wires.length, "wire")} with current, ${bad.length} to be changed`,
  ];
  const section = (title: string, head: readonly string[], rows: readonly (readonly string[])[]) => {
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
  section(
    "Wires",
    ["", "A", "stated", "smallest", "", "why"],
    sizing.wires.map((one) => [
      name(one.wire),
      one.current_A.toFixed(2),
      writeSize(one.stated_mm2, sizes) || "–",
      one.sized.ok ? one.sized.size.name : "–",
      VERDICTS[one.verdict],
      one.why,
    ]),
  );
  const list = (title: string, rows: readonly string[]) => {
    if (rows.length) lines.push("", title, ...rows.map((row) => `  ${plain(row)}`));
  };
  list(
    "Fuses",
    sizing.fuses.map(({ why, grow }) =>
      grow.length
        ? `${why}; grow ${grow.map(({ wire, area_mm2 }) => `${name(wire)} to ${writeSize(area_mm2, sizes)}`).join(", ")}`
        : why,
    ),
  );
  list(
    "Which fuse opens first",
    sizing.branches.map(({ why }) => why),
  );
  list(
    "Volts lost on the way and back",
    drops(sizing).map(({ words, budget }) => `${budget.within ? " " : "!"} ${words}`),
  );
  const standby = standbyOf(harness, traced);
  if (standby.drains.length)
    list("With the key off", [
      `${standby.total.formula}; ${standby.limit.formula}: ${standby.within ? "within" : "too much"}`,
      ...standby.days.map(
        ({ battery, days }) => `${name(battery)}: ${isKnown(days) ? days.formula : days.unknown}`,
      ),
    ]);
  list(
    "Turn-on leads",
    turnOnsOf(sizing.design).map(({ output, check }) => `${nameContact(harness, output)}: ${check.why}`),
  );
  list(
    "Speaker channels",
    channelsOf(harness, traced).flatMap((one) =>
      one.load ? [`${one.name}: ${one.load.why}`, ...one.trouble] : one.trouble,
    ),
  );
  list("What no size or rating cures", sizing.unmet);
  return lines.join("\n");
}
