import { describe, expect, test } from "vitest";
import { contactsOf, sameEnd } from "../../../src/graph/contacts.ts";
import { copyFragment, type Fragment, insertFragment, readFragment } from "../../../src/graph/edits/copy.ts";
import { nameOfEdit } from "../../../src/graph/edits/edit.ts";
import {
  assignReceptacle,
  changeView,
  mirrored,
  setCavityCount,
  writeRows,
} from "../../../src/graph/edits/housing.ts";
import { join } from "../../../src/graph/edits/join.ts";
import { capSpares, exchange, leadTo, spliceInto } from "../../../src/graph/edits/lead.ts";
import { mate, unmate } from "../../../src/graph/edits/mate.ts";
import type { Connector, Harness, PartId, WireId } from "../../../src/graph/harness.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { Build } from "../../build.ts";
import { done, refusal } from "../check-edit.ts";

const p = (name: string) => `p:${name}` as PartId;
const w = (number: number) => `w:W${number}` as WireId;
const connector = (harness: Harness, name: string) => harness.parts[p(name)] as Connector;
const spot = { x: 40, y: 80 };

/** Each wire as "X1.1 RD 0.75 XJ1.1". */
function drawn(harness: Harness): string[] {
  const name = (end: Harness["wires"][WireId]["ends"][0]) =>
    end === "loose" ? "loose" : `${harness.parts[end.part]!.designation}.${end.contact}`;
  return Object.values(harness.wires).map(
    ({ ends, colour }) => `${name(ends[0])} ${colour?.base ?? "?"} ${name(ends[1])}`,
  );
}

function charted(): Build {
  return new Build()
    .vehicle("X1", { "1": "constant-feed RD 2.5", "2": "ground", "3": "mute YE spare" })
    .unit("X2", { "1": "constant-feed YE 0.75", "2": "ground BK", "3": "mute BN" });
}

describe("joining two contacts", () => {
  test("that both have a lead makes lead, splice, lead, each in its own colour", () => {
    const { harness, at } = bind(charted());
    expect(drawn(done(harness, join(harness, at("X1.1"), at("X2.1"))))).toEqual([
      "X1.1 RD XJ1.1",
      "X2.1 YE XJ1.2",
    ]);
  });

  test("of which one has a lead runs that lead through; of which none has, a wire of no stated colour", () => {
    const { harness, at } = bind(charted());
    expect(drawn(done(harness, join(harness, at("X1.2"), at("X2.2"))))).toEqual(["X1.2 BK X2.2"]);
    const bare = bind(new Build().vehicle("X1", { "1": "ground" }).unit("X2", { "1": "ground" }));
    expect(drawn(done(bare.harness, join(bare.harness, bare.at("X1.1"), bare.at("X2.1"))))).toEqual([
      "X1.1 ? X2.1",
    ]);
  });

  test("uses a lead that is drawn and capped, takes the cap away, and the cavity is a spare no longer", () => {
    const { harness, at } = bind(charted().wire("X1.3", "XC1").wire("X2.3", "loose"));
    const after = done(harness, join(harness, at("X1.3"), at("X2.3")));
    expect(drawn(after)).toEqual(["X1.3 YE XJ1.1", "X2.3 BN XJ1.2"]);
    expect(after.parts[p("XC1")]).toBeUndefined();
    expect(contactsOf(connector(after, "X1"))[2]!.cavity!.use).toBe("optional");
  });

  test("is refused on one contact, twice, and where nothing is", () => {
    const { harness, at } = bind(charted().wire("X1.2", "X2.2"));
    expect(refusal(join(harness, at("X1.1"), at("X1.1")))).toContain("same contact");
    expect(refusal(join(harness, at("X2.2"), at("X1.2")))).toContain("already joins");
    expect(refusal(join(harness, at("X1.1"), { part: p("X2"), contact: 9 }))).toBe("X2 has no contact 9");
    expect(refusal(join(harness, at("X1.1"), { part: p("none"), contact: 1 }))).toContain("no longer there");
  });
});

describe("capping", () => {
  test("gives each spare a cap of its own and says how many", () => {
    const { harness, at } = bind(charted().wire("X2.3", "loose"));
    const edit = capSpares(harness, [at("X1.3"), { wire: w(1) }, { wire: w(1) }]);
    expect("kind" in edit && nameOfEdit(edit)).toBe("cap 2 spares");
    expect(drawn(done(harness, edit)).sort()).toEqual(["X1.3 YE XC1.1", "X2.3 BN XC2.1"]);
  });

  test("a loose lead by its contact or by its wire is the same lead", () => {
    const { harness, at } = bind(charted().wire("X2.3", "loose"));
    const edit = capSpares(harness, [at("X2.3"), { wire: w(1) }], [spot]);
    expect("kind" in edit && nameOfEdit(edit)).toBe("cap spare");
    expect(done(harness, edit).layout.places[p("1")]).toMatchObject(spot);
  });

  test("is refused where something is joined, where no end is loose, and of nothing", () => {
    const { harness, at } = bind(charted().wire("X1.2", "X2.2"));
    expect(refusal(capSpares(harness, [at("X1.2")]))).toBe("X1.2 is joined already");
    expect(refusal(capSpares(harness, [{ wire: w(1) }]))).toBe("W1 has no loose end to cap");
    expect(refusal(capSpares(harness, []))).toContain("no spare");
  });
});

describe("leads, splices, exchanges", () => {
  test("a lead to a fuse is drawn in its chart's colour; a loose one that is there is taken", () => {
    const { harness, at } = bind(charted().wire("X2.2", "loose"));
    expect(drawn(done(harness, leadTo(harness, at("X1.1"), "fuse", spot)))).toContain("X1.1 RD F1.1");
    expect(drawn(done(harness, leadTo(harness, at("X2.2"), "ground", spot)))).toEqual(["X2.2 BK XE1.1"]);
    expect(drawn(done(harness, leadTo(harness, at("X1.1"), "loose", spot)))).toContain("X1.1 RD loose");
    expect(refusal(leadTo(harness, at("X1.1"), "connector", spot))).toContain("cavities first");
  });

  test("splicing into a wire cuts it: the halves keep its colour and add up to its length", () => {
    const { harness, at } = bind(charted().wire("X1.1", "X2.1", "RD", { length_m: 3 }));
    const after = done(harness, spliceInto(harness, w(1), at("X2.3"), spot));
    expect(drawn(after)).toEqual(["X1.1 RD XJ1.1", "XJ1.2 RD X2.1", "X2.3 BN XJ1.1"]);
    expect(Object.values(after.wires).map((wire) => wire.length_m)).toEqual([1.5, 1.5, "unknown"]);
    expect(refusal(spliceInto(harness, w(1), at("X1.1"), spot))).toContain("already lands");
  });

  test("exchanging two contacts twice is as it was", () => {
    const { harness, at } = bind(charted().wire("X1.1", "X2.1").wire("X1.2", "X2.2"));
    const swapped = done(harness, exchange(harness, at("X2.1"), at("X2.2")));
    expect(drawn(swapped)).toEqual(["X1.1 RD X2.2", "X1.2 BK X2.1"]);
    expect(done(swapped, exchange(swapped, at("X2.1"), at("X2.2")))).toEqual(harness);
    expect(refusal(exchange(harness, at("X1.3"), at("X2.3")))).toContain("no wire");
  });
});

describe("mating", () => {
  const housings = (a: Partial<Connector>, b: Partial<Connector>) =>
    new Build().vehicle("X1", { "1": "ground" }, a).unit("X2", { "1": "ground" }, b).harness;

  test("is mutual, and pulls either from what it was plugged to", () => {
    const harness = new Build()
      .vehicle("X1", { "1": "ground" })
      .unit("X2", { "1": "ground" })
      .unit("X3", { "1": "ground" })
      .mate("X1", "X3").harness;
    const after = done(harness, mate(harness, p("X1"), p("X2")));
    const mates = ["X1", "X2", "X3"].map((name) => connector(after, name).matedWith);
    expect(mates).toEqual([p("X2"), p("X1"), null]);
    const parted = done(after, unmate(after, p("X2")));
    expect(["X1", "X2"].map((name) => connector(parted, name).matedWith)).toEqual([null, null]);
    expect(refusal(unmate(parted, p("X2")))).toContain("not plugged");
  });

  test("lets go of a mate that only the other side names", () => {
    const harness = housings({ matedWith: p("X2") }, {});
    const parted = done(harness, unmate(harness, p("X2")));
    expect(connector(parted, "X1").matedWith).toBeNull();
  });

  test("refuses what cannot be pushed together", () => {
    const why = (harness: Harness, a = "X1", b = "X2") => refusal(mate(harness, p(a), p(b)));
    expect(why(housings({ gender: "plug" }, { gender: "plug" }))).toBe("X1 and X2 are both plugs");
    expect(why(housings({ shell: "A" }, { shell: "B" }))).toContain("different shells");
    expect(why(housings({}, { cavities: [] }))).toContain("1 and 0 cavities");
    expect(why(housings({}, {}), "X1", "X1")).toContain("itself");
    expect(why(new Build().part("fuse", "X1").part("fuse", "X2").harness)).toContain("only two connectors");
  });
});

describe("housings", () => {
  test("a changed view mirrors the face; changed back it is as it was", () => {
    const harness = new Build().vehicle(
      "X1",
      { "1": "ground", "2": "ground", "3": "ground" },
      { rows: [[1, 2], [3]] },
    ).harness;
    const after = done(harness, changeView(harness, p("X1")));
    expect(connector(after, "X1")).toMatchObject({
      view: "mating-face",
      rows: [
        [2, 1],
        [0, 3],
      ],
    });
    expect(
      mirrored(
        mirrored([
          [1, 2],
          [3, 0],
        ]),
      ),
    ).toEqual([
      [1, 2],
      [3, 0],
    ]);
  });

  test("fewer cavities leave wires loose, and a wire with nothing left to hold it goes", () => {
    const build = charted().wire("X1.1", "X2.1").wire("X1.3", "X2.2").wire("X1.3", "loose");
    const after = done(build.harness, setCavityCount(build.harness, p("X1"), 2));
    expect(drawn(after)).toEqual(["X1.1 RD X2.1", "loose YE X2.2"]);
    expect(connector(after, "X1").rows.flat()).toEqual([1, 2, 0]);
  });

  test("more cavities are numbered on, past labels that are taken, and the face grows by them", () => {
    const harness = new Build().vehicle(
      "X1",
      { a: "ground", "4": "ground", b: "ground" },
      { rows: [[3, 1], [2]] },
    ).harness;
    const after = connector(done(harness, setCavityCount(harness, p("X1"), 6)), "X1");
    expect(after.cavities.map((cavity) => cavity.label).sort()).toEqual(["4", "5", "6", "7", "a", "b"]);
    expect(after.rows).toEqual([
      [3, 1, 4, 6],
      [2, 5],
    ]);
    expect(refusal(setCavityCount(harness, p("X1"), 3))).toContain("already");
    expect(refusal(setCavityCount(harness, p("X1"), 1e9))).toContain("up to 2000");
    expect(
      connector(done(harness, setCavityCount(harness, p("X1"), 2000)), "X1").rows.flat().length,
    ).toBeGreaterThanOrEqual(2000);
  });

  test("a receptacle takes the side of its module, and can be taken off again", () => {
    const harness = new Build().module("A1", { side: "equipment" }).vehicle("X1", { "1": "ground" }).harness;
    const after = done(harness, assignReceptacle(harness, p("X1"), p("A1")));
    expect(connector(after, "X1").belongsTo).toEqual({ side: "equipment", module: p("A1") });
    expect(connector(done(after, assignReceptacle(after, p("X1"), null)), "X1").belongsTo.module).toBeNull();
    expect(refusal(assignReceptacle(harness, p("X1"), p("X1")))).toBe("that is no module");
    expect(refusal(assignReceptacle(after, p("X1"), p("A1")))).toContain("already");
  });

  test("pasted rows go to the cavity of their label, else to the next, and add what is missing", () => {
    const harness = new Build().vehicle("X1", { a: "ground", b: "ground" }).harness;
    const edit = writeRows(harness, p("X1"), [
      { label: "b", text: "two" },
      { text: "three" },
      { label: "a", text: "one" },
    ]);
    const texts = connector(done(harness, edit), "X1").cavities.map(
      (cavity) => `${cavity.label}:${cavity.text}`,
    );
    expect(texts).toEqual(["a:one", "b:two", "3:three"]);
    expect(refusal(writeRows(harness, p("X1"), []))).toContain("nothing");
  });
});

describe("copying", () => {
  const full = charted().wire("X1.1", "X2.1").wire("X1.2", "XE1");
  const fragment = () => copyFragment(full.harness, new Set([p("X1"), p("X2")]), new Set([w(2)]));

  test("takes wires between the parts, and frees ends that stay behind", () => {
    expect(fragment().wires.map((wire) => wire.ends.includes("loose"))).toEqual([false, true]);
  });

  test("puts it under new ids and designations, as often as wanted, and travels as text", () => {
    const read = readFragment(JSON.stringify(fragment()))!;
    expect(read).toEqual(fragment());
    let harness: Harness = full.harness;
    for (let i = 0; i < 2; i++) {
      const result = insertFragment(harness, read, 16, 16);
      if (!("edit" in result)) throw new Error(result.why);
      harness = done(harness, result.edit);
    }
    const names = Object.values(harness.parts).map((part) => part.designation);
    expect(names.filter((name) => name.startsWith("X") && name !== "XE1")).toEqual([
      "X1",
      "X2",
      "X3",
      "X4",
      "X5",
      "X6",
    ]);
    expect(Object.keys(harness.wires)).toHaveLength(6);
  });

  test("gives no two parts one designation when the fragment's own follow those of the harness", () => {
    const target = new Build().vehicle("X1", { "1": "ground" }).harness;
    const result = insertFragment(target, fragment(), 0, 0);
    if (!("edit" in result)) throw new Error(result.why);
    const names = Object.values(done(target, result.edit).parts).map((part) => part.designation);
    expect(new Set(names).size).toBe(names.length);
  });

  test("reads no fragment out of other text, however it looks", () => {
    const own = fragment();
    const spoilt: unknown[] = [
      { ...own, parts: [{}] },
      { ...own, pigtailFragment: 2 },
      { ...own, wires: "x" },
      [own],
    ];
    for (const text of ["", "X1\tX2", '{"pigtailFragment"', ...spoilt.map((one) => JSON.stringify(one))])
      expect(readFragment(text)).toBeNull();
  });

  test("a fragment that names what it does not bring leaves those ends loose", () => {
    const own = fragment();
    const broken: Fragment = {
      ...own,
      parts: own.parts.slice(1),
      cables: [
        { id: "c:1" as never, designation: "C1", kind: "multicore", wires: [w(77)], shield: w(78), note: "" },
      ],
    };
    const result = insertFragment(emptyHarness(), broken, 0, 0);
    if (!("edit" in result)) throw new Error(result.why);
    const after = done(emptyHarness(), result.edit);
    expect(Object.values(after.wires).every((wire) => wire.ends.includes("loose"))).toBe(true);
  });
});

describe("what removal leaves", () => {
  test("waivers about what is gone end; photos and test rows lose only the mention", () => {
    const about = [{ part: p("X1"), contact: 1 }, { wire: w(1) }];
    const start = charted().wire("X1.1", "X2.1").harness;
    const harness = {
      ...start,
      waivers: { "v:1": { id: "v:1", rule: "r", about, reason: "on purpose", by: "", date: "" } },
      photos: { "f:1": { id: "f:1", caption: "", about, image: "data:image/png;base64,AAAA" } },
    } as unknown as Harness;
    const after = done(harness, { kind: "remove", parts: [], wires: [w(1)] });
    expect(after.waivers).toEqual({});
    expect(Object.values(after.photos)[0]!.about).toEqual([about[0]]);
  });
});

function bind(build: Build) {
  const at = (name: string) => build.at(name);
  expect(sameEnd(at("X1.1"), { part: p("X1"), contact: 1 })).toBe(true);
  return { harness: build.harness, at };
}
