import { expect, test } from "vitest";
import { writeColour } from "../../src/catalogue/colours.ts";
import { readColours, readColourText } from "../../src/match/words/read-colour.ts";

// Source: DIN 47100 (withdrawn 1998), cores 1 to 44, as printed in three cable makers' tables: insulation first, then ring.
const CORES =
  "WH BN GN YE GY PK BU RD BK VT GYPK RDBU WHGN BNGN WHYE YEBN WHGY GYBN WHPK PKBN WHBU BNBU WHRD BNRD WHBK BNBK GYGN YEGY PKGN YEPK GNBU YEBU GNRD YERD GNBK YEBK GYBU PKBU GYRD PKRD GYBK PKBK BUBK RDBK".split(
    " ",
  );
const withSlash = (code: string) => code.replace(/^(..)(..)$/, "$1/$2");

test("44 cores, written together or apart, are base and ring in that order", () => {
  expect(CORES).toHaveLength(44);
  expect(readColours(CORES).map(writeColour)).toEqual(CORES.map(withSlash));
  expect(readColours(CORES.map(withSlash)).map(writeColour)).toEqual(CORES.map(withSlash));
});

// Source: German letters, a cable assembler's table of VDE and IEC codes: sw, br, rt, ge, gn, bl, vi, gr, ws, rs.
test("the same cores in German letters are the same colours", () => {
  const german: Readonly<Record<string, string>> = {
    BK: "sw",
    BN: "br",
    RD: "rt",
    YE: "ge",
    GN: "gn",
    BU: "bl",
    VT: "vi",
    GY: "gr",
    WH: "ws",
    PK: "rs",
  };
  const letters = CORES.map((core) => core.replace(/../g, (code) => german[code]!));
  expect(readColours(letters).map(writeColour)).toEqual(CORES.map(withSlash));
});

// Source: IEC 60757:2021, published extracts: GN and YE are combined only as GNYE; lower-case letters mean the same.
test("GNYE is one code; lower case means the same", () => {
  expect(readColourText("GNYE")).toEqual({ base: "GNYE", tracer: null });
  for (const core of CORES) expect(readColourText(core.toLowerCase())).toEqual(readColourText(core));
});

// Source: wire-colour pages of vehicle workshop manuals: "G/Y" and "BL-Y" are base, then stripe; "1.0 G/Y" is size first.
test("base stands before the stripe, size before both", () => {
  const colours = readColours(["1.0 G/Y", "BL-Y", "BL/Y", "W", "B", "R", "BR", "GR", "Y", "G", "O"]).map(
    writeColour,
  );
  expect(colours.slice(0, 3)).toEqual(["GN/YE", "BU/YE", "BU/YE"]);
});
