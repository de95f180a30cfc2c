import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Chart } from "../../../src/match/chart.ts";
import { cautious } from "../../../src/match/propose/cautious.ts";
import type { Proposal } from "../../../src/match/propose/proposal.ts";
import { propose } from "../../../src/match/propose/propose.ts";
import { chartOf } from "../chart-of.ts";

const joinsOf = (proposal: Proposal) => proposal.joins.map((join) => `${join.left}=${join.right}`);

function match(left: Parameters<typeof chartOf>[1], right: Parameters<typeof chartOf>[1]): Proposal {
  return propose(chartOf("Vehicle", left), chartOf("Radio", right));
}

const vehicle = chartOf("Van, radio socket", [
  "A4 | +12 V constant | RD",
  "A5 | Power antenna | GN",
  "A6 | Illumination | BU",
  "A7 | Accessory | YE",
  "A8 | Ground | BN",
  "B3 | Front right + | GY",
  "B4 | Front right - | GY/BK",
  "B5 | Front left + | WH",
  "B6 | Front left - | WH/BK",
  "A1 | Speed signal | PK",
]);
const receiver = chartOf("Receiver", [
  "1 | Battery | YE",
  "2 | ACC | RD",
  "3 | Earth | BK",
  "4 | Aerial supply | BU",
  "5 | Illum | OG",
  "6 | FL+ | WH",
  "7 | FL- | WH/BK",
  "8 | FR+ | GY",
  "9 | FR- | GY/BK",
  "10 | Mute | BN",
]);

describe("a receiver in a van", () => {
  const proposal = propose(vehicle, receiver);

  test("every lead with a partner is joined, by what it is for and not by its colour", () => {
    expect(joinsOf(proposal)).toEqual([
      "A4=1",
      "A5=4",
      "A6=5",
      "A7=2",
      "A8=3",
      "B3=8",
      "B4=9",
      "B5=6",
      "B6=7",
    ]);
    expect(proposal.ask).toEqual([]);
    expect(proposal.capLeft).toEqual(["A1"]);
    expect(proposal.capRight).toEqual(["10"]);
  });

  test("a colour that means something else over there is marked as a trap", () => {
    const constant = proposal.joins.find((join) => join.left === "A4")!;
    expect(constant.why).toBe("both are the constant feed; the charts' colours differ: RD here, YE there");
    expect(constant.traps.join(" ")).toContain(
      "RD is the constant feed here; on the right RD is 2, the switched feed",
    );
    expect(proposal.joins.find((join) => join.left === "B5")!.traps).toEqual([]);
  });

  test("the other way round the same leads are joined", () => {
    const swapped = propose(receiver, vehicle);
    expect(new Set(swapped.joins.map((join) => `${join.right}=${join.left}`))).toEqual(
      new Set(joinsOf(proposal)),
    );
    expect(swapped.capLeft).toEqual(proposal.capRight);
  });
});

describe("what no score outweighs", () => {
  test.each([
    ["constant with switched", "Constant feed", "Switched 12 V"],
    ["plus with minus", "Front left +", "Front left -"],
    ["a channel with another", "Front left +", "Rear left +"],
    ["a channel with another, of one side", "Front left +", "Front right +"],
    ["a feed with a ground", "Battery +", "Ground"],
    ["a supply with a signal", "Accessory", "Video signal"],
    ["CAN high with low", "CAN H", "CAN L"],
  ])("%s is neither joined nor asked about, though colour, size and current agree", (_name, one, other) => {
    const alike = { area_mm2: 0.75, current_A: 5 };
    const proposal = match([[`1 | ${one} | RD`, alike]], [[`7 | ${other} | RD`, alike]]);
    expect(proposal.joins).toEqual([]);
    expect(proposal.ask).toEqual([]);
    expect(proposal.capLeft).toEqual(["1"]);
    expect(proposal.capRight).toEqual(["7"]);
  });

  test("two outputs are not joined; a person is asked, for a chart may be written from the other side", () => {
    const gives = { direction: "gives" } as const;
    const proposal = match([["1 | Amp remote turn-on | BU", gives]], [["7 | Amplifier turn-on | BU", gives]]);
    expect(proposal.joins).toEqual([]);
    expect(proposal.ask[0]!.why).toContain("both charts call it an output");
  });

  test("leads of one colour whose words nobody knows stay apart", () => {
    const proposal = match(["1 | Zorble | YE"], ["7 | Quux | YE"]);
    expect(proposal.joins).toEqual([]);
    expect(proposal.ask).toEqual([]);
  });
});

describe("ambiguous words", () => {
  test("a bare 12 V is a question with its candidates", () => {
    const proposal = match(
      ["1 | 12V | RD", "2 | Ground | BK"],
      ["A | Battery | YE", "B | ACC | RD", "C | GND | BK"],
    );
    expect(joinsOf(proposal)).toEqual(["2=C"]);
    expect(proposal.ask).toHaveLength(1);
    expect(proposal.ask[0]!.left).toEqual(["1"]);
    expect([...proposal.ask[0]!.right].sort()).toEqual(["A", "B"]);
    expect(proposal.ask[0]!.why).toContain("“12V” (1) may be constant feed, switched feed");
  });

  test("remote is asked about where two fit, and taken where one does", () => {
    const both = match(["1 | Remote | BU"], ["A | Amp turn-on | BU", "B | Power antenna | BU"]);
    expect(both.joins).toEqual([]);
    expect(both.ask[0]!.right).toContain("A");
    const one = match(["1 | Remote | BU"], ["A | Amp turn-on | BU/WH"]);
    expect(joinsOf(one)).toEqual(["1=A"]);
    expect(one.joins[0]!.why).toContain("“Remote” is taken for amplifier turn-on");
    expect(one.joins[0]!.confidence).toBeLessThan(0.9);
  });

  test("IGN is asked about where two keyed feeds fit, settled where its chart has both, taken where it is the only one", () => {
    const two = match(["1 | IGN | RD"], ["A | ACC | RD", "B | Run/crank 12 V | PK"]);
    expect(two.joins).toEqual([]);
    expect([...two.ask[0]!.right].sort()).toEqual(["A", "B"]);
    const settled = match(["1 | IGN | RD", "2 | ACC | YE"], ["A | ACC | RD", "B | Run/crank 12 V | PK"]);
    expect(joinsOf(settled)).toEqual(["1=B", "2=A"]);
    expect(settled.joins[0]!.why).toContain("nothing else in its chart leaves another sense");
    // Live with the key in either sense: no sense of the word makes this a wrong join.
    const only = match(["1 | IGN | RD"], ["A | ACC | RD"]);
    expect(joinsOf(only)).toEqual(["1=A"]);
    expect(only.joins[0]!.confidence).toBeLessThan(0.8);
    expect(only.joins[0]!.why).toContain("“IGN” is taken for");
  });

  test("a bare 12 V is never joined with a constant feed alone, nor with a switched one", () => {
    for (const words of ["Battery +", "ACC", "Kl. 15"]) {
      const proposal = match(["1 | 12V | RD"], [`A | ${words} | RD`]);
      expect(proposal.joins).toEqual([]);
      expect(proposal.ask).toHaveLength(1);
    }
    expect(joinsOf(match(["1 | 12V in | RD"], ["A | + 12 V supply | RD"]))).toEqual(["1=A"]);
  });

  test("sub may be line or speaker level", () => {
    const proposal = match(["1 | sub | WH"], ["A | Sub pre-out | WH", "B | Subwoofer speaker + | WH"]);
    expect(proposal.joins).toEqual([]);
    expect([...proposal.ask[0]!.right].sort()).toEqual(["A", "B"]);
  });
});

test("put before a person, a power lead of open wording is a question with its likely partner", () => {
  const proposal = match(["1 | IGN | RD", "2 | Remote | BU"], ["A | ACC | RD", "B | Amp turn-on | BU"]);
  expect(joinsOf(proposal)).toEqual(["1=A", "2=B"]);
  const put = cautious(proposal);
  expect(joinsOf(put)).toEqual(["2=B"]);
  expect(put.ask).toEqual([{ left: ["1"], right: ["A"], why: expect.stringMatching(/^probably: “IGN”/) }]);
  expect(cautious(put)).toBe(put);
});

test("a dash that stands apart is a minus beside its plus, and open without", () => {
  const pair = match(["1 | Battery +", "2 | Battery -"], ["A | Constant feed", "B | Ground"]);
  expect(joinsOf(pair)).toEqual(["1=A", "2=B"]);
  const alone = match(["2 | Key-switched feed -"], ["B | Ground"]);
  expect(alone.joins).toEqual([]);
  expect(alone.ask).toHaveLength(1);
});

test("what the vehicle gives by nature is not fed by a box's output", () => {
  const gives = { direction: "gives" } as const;
  const proposal = propose(
    chartOf("Van Wren, factory plug", ["1 | Vehicle speed"]),
    chartOf("Interface module", [["A | Speed signal", gives]]),
  );
  expect(proposal.joins).toEqual([]);
  expect(proposal.ask[0]!.why).toContain("both charts call it an output");
});

describe("one lead to several", () => {
  test("two takers of one feed are one splice with its ends and current", () => {
    const proposal = match(
      ["1 | Accessory | RD", "2 | Ground | BK"],
      [
        ["A | ACC | RD", { current_A: 3 }],
        ["B | Switched 12 V | RD", { current_A: 0.5 }],
        "C | Ground | BK",
        "D | Chassis ground | BK",
      ],
    );
    expect(joinsOf(proposal)).toEqual(["1=A", "1=B", "2=C", "2=D"]);
    expect(proposal.splices).toEqual([
      { function: "switched-feed", left: ["1"], right: ["A", "B"], ends: 3, current_A: 3.5 },
      { function: "ground", left: ["2"], right: ["C", "D"], ends: 3, current_A: null },
    ]);
  });

  test("of two feeds of the vehicle to one taker only one is used", () => {
    const proposal = match(["1 | Constant 12 V", "2 | Battery"], ["A | Battery + | YE"]);
    expect(proposal.joins).toHaveLength(1);
    expect(proposal.capLeft).toHaveLength(1);
  });

  test("speakers are never shared", () => {
    const proposal = match(["1 | FL +"], ["A | FL +", "B | Front left speaker positive"]);
    expect(proposal.joins).toHaveLength(1);
  });
});

test("a required lead without partner is said", () => {
  const proposal = match(["1 | Ground"], ["A | Battery + | YE", "B | Ground"]);
  expect(proposal.capRight).toEqual(["A"]);
  expect(proposal.missing).toMatchObject([{ side: "right", lead: "A" }]);
  expect(proposal.missing[0]!.why).toContain("fused feed");
});

test("half a pair is said", () => {
  const proposal = match(["1 | CAN H"], ["A | CAN H", "B | CAN L"]);
  expect(proposal.missing).toMatchObject([{ side: "right", lead: "B" }]);
});

test("an empty cavity has no lead to cap", () => {
  const proposal = match([["1 | not used", { isUnused: true }]], []);
  expect(proposal.capLeft).toEqual([]);
});

describe("the order of rows changes nothing", () => {
  const shuffled = (chart: Chart) =>
    fc
      .shuffledSubarray([...chart.leads], { minLength: chart.leads.length })
      .map((leads) => ({ ...chart, leads }));

  test("joins, questions and caps are the same sets", () => {
    const sets = (proposal: Proposal) => ({
      joins: new Set(joinsOf(proposal)),
      ask: new Set(proposal.ask.map((one) => `${[...one.left].sort()}:${[...one.right].sort()}`)),
      capLeft: new Set(proposal.capLeft),
      capRight: new Set(proposal.capRight),
    });
    const plain = sets(propose(vehicle, receiver));
    fc.assert(
      fc.property(shuffled(vehicle), shuffled(receiver), (left, right) => {
        expect(sets(propose(left, right))).toEqual(plain);
      }),
      { numRuns: 60, seed: 7 },
    );
  });
});
