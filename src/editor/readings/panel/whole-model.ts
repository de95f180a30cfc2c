import { writeSize } from "../../../catalogue/conductors.ts";
import { nameContact } from "../../../catalogue/describe.ts";
import type { CoveringChoice } from "../../../electrical/bundle/covering.ts";
import { type Placed, packCircles } from "../../../electrical/bundle/pack/pack.ts";
import { outsideDiameter } from "../../../electrical/conductor/insulation.ts";
import { type Answer, digits, type Figure, isKnown } from "../../../electrical/figure.ts";
import { bundlesOf, type RunBundle, wallOf } from "../../../electrical/operate/bundles.ts";
import { channelsOf } from "../../../electrical/operate/channels.ts";
import { designOf } from "../../../electrical/operate/design.ts";
import { lengthsOf } from "../../../electrical/operate/lengths.ts";
import { coordinateFuses } from "../../../electrical/operate/protect.ts";
import { standbyOf } from "../../../electrical/operate/standby.ts";
import { turnOnsOf } from "../../../electrical/operate/turn-on.ts";
import { refOfKey } from "../../../graph/contacts.ts";
import type { Colour, Harness, PartId, Run } from "../../../graph/harness.ts";
import { type Traced, trace } from "../../../graph/trace.ts";
import type { About } from "../../../rules/rule.ts";
import type { FigureLine } from "./figure-line.ts";
import { type BranchRow, branchRow } from "./sizes-model.ts";

export type DrainRow = { readonly part: PartId; readonly name: string; readonly drain: string };

export type ChannelRow = {
  readonly id: string;
  readonly name: string;
  readonly about: readonly About[];
  readonly lines: readonly FigureLine[];
  readonly polarity: string;
  readonly trouble: readonly string[];
};

export type BundleRow = {
  readonly id: string;
  readonly name: string;
  readonly count: string;
  readonly lines: readonly FigureLine[];
  /** A cross-section that can be drawn; `null` where there is nothing to pack. */
  readonly section: {
    readonly diameter_mm: number;
    readonly circles: readonly (Placed & { readonly colour: Colour | null; readonly name: string })[];
  } | null;
  readonly fits: readonly string[];
  readonly left: readonly string[];
};

export type LengthRow = {
  readonly wire: string;
  readonly about: readonly About[];
  readonly size: string;
  readonly cut: Answer;
  readonly cost: Figure | null;
};

export type WholeView = {
  readonly standby: {
    readonly rows: readonly DrainRow[];
    readonly lines: readonly FigureLine[];
    readonly verdict: string;
    readonly hasBattery: boolean;
  };
  readonly branches: readonly BranchRow[];
  readonly turnOns: readonly FigureLine[];
  readonly channels: readonly ChannelRow[];
  readonly bundles: readonly BundleRow[];
  readonly lengths: {
    readonly rows: readonly LengthRow[];
    readonly bySize: readonly { readonly size: string; readonly count: number; readonly total: string }[];
    readonly total: string;
    readonly cost: string | null;
    readonly unknown: number;
  };
};

/** What is to be said of the harness as a whole, whatever state it is in. Plain data, so that a worker can send it. */
export function wholeView(harness: Harness): WholeView {
  const traced = trace(harness);
  const design = designOf(harness, traced);
  return {
    standby: standbyView(harness, traced),
    branches: coordinateFuses(design).map((one) => branchRow(harness, one)),
    turnOns: turnOnsOf(design).map(({ output, check }): FigureLine => {
      const ref = refOfKey(output);
      return {
        id: output,
        name: nameContact(harness, ref),
        answer: check.total,
        remark: check.why,
        about: [ref],
      };
    }),
    channels: channelRows(harness, traced),
    bundles: bundlesOf(harness, traced).map((one) => bundleRow(harness, one)),
    lengths: lengthsView(harness),
  };
}

function standbyView(harness: Harness, traced: Traced): WholeView["standby"] {
  const { drains, total, limit, within, days } = standbyOf(harness, traced);
  return {
    rows: drains.map(({ part, name, drain_mA }) => ({ part, name, drain: `${digits(drain_mA, 3)} mA` })),
    lines: [
      { id: "total", name: "All of it together", answer: total },
      { id: "limit", name: "What it may draw", answer: limit },
      ...days.map(
        ({ battery, days: answer }): FigureLine => ({
          id: battery,
          name: `Days until ${harness.parts[battery]!.designation} is down`,
          answer,
          about: [{ part: battery }],
        }),
      ),
    ],
    verdict: within ? "Within what it may draw." : "More than it may draw with the key off.",
    hasBattery: days.length > 0,
  };
}

/** What each speaker channel sees; those of one speaker where it is named. */
export function channelRows(harness: Harness, traced: Traced, only?: PartId): readonly ChannelRow[] {
  return channelsOf(harness, traced)
    .filter(({ speakers }) => only === undefined || speakers.some(({ speaker }) => speaker === only))
    .map((channel): ChannelRow => {
      const { load } = channel;
      const lines: FigureLine[] = [];
      if (load) {
        lines.push({ id: "seen", name: "Impedance it sees", answer: load.seen, remark: load.why });
        if (load.eachHalf) lines.push({ id: "half", name: "Each half of the bridge", answer: load.eachHalf });
      } else {
        const unknown = `No speaker hangs between the two leads of ${channel.name}.`;
        lines.push({ id: "seen", name: "Impedance it sees", answer: { unknown } });
      }
      for (const { speaker, loss, power } of channel.speakers) {
        const { designation } = harness.parts[speaker]!;
        lines.push(
          { id: `${speaker} loss`, name: `Left in the wire of ${designation}`, answer: loss.inWire },
          { id: `${speaker} level`, name: `Quieter by, at ${designation}`, answer: loss.level },
          { id: `${speaker} power`, name: `Power at ${designation}`, answer: power },
        );
      }
      const reversed = channel.speakers.filter((one) => one.reversed);
      return {
        id: `${channel.plus.part}#${channel.plus.contact}`,
        name: channel.name,
        about: [channel.plus],
        lines,
        polarity:
          channel.speakers.length === 0
            ? ""
            : reversed.length === 0
              ? "Plus on plus."
              : `Reversed: ${reversed.map(({ speaker }) => harness.parts[speaker]!.designation).join(", ")}.`,
        trouble: channel.trouble,
      };
    });
}

function bundleRow(harness: Harness, bundle: RunBundle): BundleRow {
  const run = harness.runs[bundle.run]!;
  const { diameter, mass, bendRadius, covering, grommet, heatShrink } = bundle;
  const lines: FigureLine[] = [];
  if (diameter) {
    lines.push(
      { id: "packed", name: "Diameter, packed", answer: diameter.packed },
      { id: "rule", name: "Diameter by the rule of thumb", answer: diameter.rule },
      { id: "reckoned", name: "To order by", answer: diameter.reckoned },
      {
        id: "mass",
        name: "Mass of its wires",
        answer: mass ?? { unknown: `State the length of the run ${run.designation}: its mass needs it.` },
      },
    );
    if (bendRadius) lines.push({ id: "bend", name: "Bend it no tighter than", answer: bendRadius });
  }
  const said = (choice: CoveringChoice | null) => (choice ? [choice.why] : []);
  return {
    id: run.id,
    name: sayRun(run),
    count: bundle.wires.length === 1 ? "1 wire" : `${bundle.wires.length} wires`,
    lines,
    section: sectionOf(harness, bundle),
    fits: [
      ...said(covering),
      ...said(grommet),
      ...(diameter
        ? [heatShrink ? `heat-shrink ${heatShrink.name} slides on and grips` : "no stocked heat-shrink fits"]
        : []),
    ],
    left: bundle.unknown.map(({ wire, why }) => `${harness.wires[wire]!.designation} is left out: ${why}`),
  };
}

function sayRun(run: Run): string {
  const way = [run.from, run.to].filter(Boolean).join(" to ");
  return way ? `${run.designation}, ${way}` : run.designation;
}

function sectionOf(harness: Harness, bundle: RunBundle): BundleRow["section"] {
  const round = bundle.wires.flatMap((id) => {
    const wire = harness.wires[id]!;
    if (wire.area_mm2 === "unknown") return [];
    const outside = outsideDiameter(Math.max(wire.area_mm2, 0.001), wallOf(wire.insulation));
    return isKnown(outside) ? [{ wire, diameter_mm: outside.value }] : [];
  });
  // A section that leaves out wires would be too small a circle to believe.
  if (round.length === 0 || round.length !== bundle.wires.length || round.length > MOST_DRAWN) return null;
  const { diameter_mm, places } = packCircles(round.map((one) => one.diameter_mm));
  return {
    diameter_mm,
    circles: places.map((place) => ({
      ...place,
      colour: round[place.index]!.wire.colour,
      name: round[place.index]!.wire.designation,
    })),
  };
}

const MOST_DRAWN = 400;

function lengthsView(harness: Harness): WholeView["lengths"] {
  const { wires, bySize, total_m, cost, unknown } = lengthsOf(harness);
  const { sizes, electrical } = harness.settings;
  const size = (area_mm2: number | "unknown") => writeSize(area_mm2, sizes) || "not stated";
  return {
    rows: wires.map(({ wire, cut, cost: own }) => ({
      wire: harness.wires[wire]!.designation,
      about: [{ wire }],
      size: size(harness.wires[wire]!.area_mm2),
      cut,
      cost: own,
    })),
    bySize: bySize.map((one) => ({
      size: size(one.area_mm2),
      count: one.count,
      total: `${one.total_m.toFixed(2)} m`,
    })),
    total: `${total_m.toFixed(2)} m`,
    cost: cost === null ? null : `${cost.toFixed(2)} ${electrical.currency}`.trim(),
    unknown: unknown.length,
  };
}
