import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { writeColour } from "../../../src/catalogue/colours.ts";
import {
  colourSpan,
  readChartColours,
  readColours,
  readColourText,
} from "../../../src/match/words/read-colour.ts";

const read = (text: string) => writeColour(readColourText(text));
const chart = (texts: string) =>
  readColours(texts.split(" "))
    .map((colour) => writeColour(colour) || "?")
    .join(" ");

describe("one text alone", () => {
  // Words and abbreviations: common practice, no source.
  test.each([
    ["black schwarz noir negro nero zwart czarny BLK Bk SW", "BK"],
    ["brown braun marron marrón marrone bruin brązowy brun BRN", "BN"],
    ["red rot rouge rojo rosso rood czerwony RED rt", "RD"],
    ["orange naranja arancione oranje pomarańczowy ORG ORN", "OG"],
    ["yellow gelb jaune amarillo giallo geel żółty YEL YLW ge", "YE"],
    ["green grün gruen vert verde groen zielony GRN hellgrün donkergroen ciemnozielony lgrn", "GN"],
    ["blue blau bleu azul celeste blu azzurro blauw niebieski BLU hellblau jasnoniebieski LTBLU", "BU"],
    ["violet purple violett lila mauve morado viola paars fioletowy VIO PPL", "VT"],
    ["grey gray slate grau gris grigio grijs szary GRY", "GY"],
    ["white weiß weiss blanc blanche blanco bianco wit biały bialy WHT ws", "WH"],
    ["pink rosa rose roze różowy PNK", "PK"],
    ["silver silber plata", "SR"],
    ["gold dorado goud", "GD"],
    ["turquoise türkis turchese", "TQ"],
  ])("%s: %s", (words, code) => {
    for (const word of words.split(" ")) expect([word, read(word)]).toEqual([word, code]);
  });

  test.each([
    ["white/black", "WH/BK"],
    ["WHT-BLK", "WH/BK"],
    ["W-B", "WH/BK"],
    ["violet/black stripe", "VT/BK"],
    ["violet with black tracer", "VT/BK"],
    ["YEL w/ BLK", "YE/BK"],
    ["white (black stripe)", "WH/BK"],
    ["yellow, black stripe", "YE/BK"],
    ["blue base, white tracer", "BU/WH"],
    ["black stripe on yellow", "YE/BK"],
    ["blanc/noir", "WH/BK"],
    ["gris à rayure blanche", "GY/WH"],
    ["blau-weiss", "BU/WH"],
    ["schwarzweiß", "BK/WH"],
    ["weiß mit schwarzem Streifen", "WH/BK"],
    ["rosa-schwarz", "PK/BK"],
    ["negro con raya blanca", "BK/WH"],
    ["nero-bianco", "BK/WH"],
    ["rood met zwarte streep", "RD/BK"],
    ["czarno-biały", "BK/WH"],
    ["bialy z niebieskim paskiem", "WH/BU"],
    ["dk blu/lt grn", "BU/GN"],
    ["WHBK", "WH/BK"],
    ["swge", "BK/YE"],
    ["1.0 G/Y", "GN/YE"],
    ["rt 2,5", "RD"],
    ["SW (schwarz)", "BK"],
    ["WH/BK (white/black)", "WH/BK"],
    ["fil noir", "BK"],
    ["azul claro", "BU"],
  ])("%s is %s", (text, colour) => {
    expect(read(text)).toBe(colour);
  });

  test.each(["yelow", "yellwo", "yyellow"])("%s is a misspelt yellow", (text) => {
    expect(read(text)).toBe("YE");
  });

  test("green and yellow are one code only where the words say so", () => {
    expect(["green and yellow", "grün und gelb", "vert et jaune", "GNYE"].map(read)).toEqual(
      Array(4).fill("GNYE"),
    );
    expect(["green-yellow", "gn/ge", "GN/YE", "green with yellow"].map(read)).toEqual(Array(4).fill("GN/YE"));
  });

  test.each([
    ["B"], // black, white
    ["G"], // green, grey, yellow
    ["GR"], // grey, green
    ["BL"], // blue, black, white
    ["BR"], // brown, black with red
    ["P"], // pink, violet
    ["V"], // violet, green
    ["N"], // brown, black
    ["SB"], // black, sky blue
    ["L"],
    ["beige"], // no code
    ["tan/black"],
    ["clear"],
    ["bare"],
    ["red/white/blue"], // three
    ["black or brown"],
    ["greey"], // a letter from green and from grey
    ["B1"],
    ["B+"],
    ["no"],
    ["n/a"],
    ["-"],
    ["block"],
    ["route"],
    [""],
  ])("%s is read as no colour", (text) => {
    expect(readColourText(text)).toBeNull();
  });
});

describe("a chart's letters are read together", () => {
  test.each([
    [
      "German letters",
      "sw ws rt bl gn ge gr br vi or rs sw/ge gn-ws",
      "BK WH RD BU GN YE GY BN VT OG PK BK/YE GN/WH",
    ],
    [
      "Japanese-style letters",
      "B R W Y G L BR P GR V LG O SB G-R L/W",
      "BK RD WH YE GN BU BN PK GY VT GN OG BU GN/RD BU/WH",
    ],
    [
      "British letters",
      "B U N G W Y R P O S K LG NW UY GN",
      "BK BU BN GN WH YE RD VT OG GY PK GN BN/WH BU/YE GN/BN",
    ],
    ["North American letters", "BLK WHT RED BL GN GR P PK", "BK WH RD BU GN GY VT PK"],
    ["French letters", "N B R V J M G O Vi Ro Be B/N", "BK WH RD GN YE BN GY OG VT PK BU WH/BK"],
    ["French two-letter codes", "BA BE JA MA NO RG VE VI GR", "WH BU YE BN BK RD GN VT GY"],
    ["Italian letters", "A B C G H L M N R S V Z B/N", "BU WH OG YE GY BU BN BK RD PK GN VT WH/BK"],
    ["Spanish two-letter codes", "NE BL RO AM AZ VE MA NA GR", "BK WH RD YE BU GN BN OG GY"],
    ["Swedish-style letters", "SB R BL GR Y GN", "BK RD BU GY YE GN"],
    ["Dutch letters", "zw wt rd gl gn bl br", "BK WH RD YE GN BU BN"],
    ["IEC 60757 letters", "BK BN RD OG YE GN BU VT GY WH PK", "BK BN RD OG YE GN BU VT GY WH PK"],
  ])("%s", (custom, texts, colours) => {
    expect(chart(texts)).toBe(colours);
    expect(readChartColours(texts.split(" "))).toMatchObject({ custom, doubtful: [] });
  });

  test("what stays open under the customs that fit is no guess", () => {
    expect(readChartColours(["B", "R"])).toEqual({
      colours: [null, { base: "RD", tracer: null }],
      custom: null,
      doubtful: [0],
    });
    expect(chart("B G R")).toBe("? ? RD"); // English, French or Italian
    expect(chart("B R Y W P")).toBe("BK RD YE WH ?"); // pink or violet
    expect(chart("BK B R W")).toBe("? ? RD WH"); // two codes for black
    expect(chart("BLK WHT RED GR")).toBe("BK WH RD ?"); // grey or green
  });

  test("a colour that the chart writes another way is out of question", () => {
    expect(chart("BLK WHT RED GRN GR BL")).toBe("BK WH RD GN GY BU");
    expect(chart("B R Y W P PK")).toBe("BK RD YE WH VT PK");
  });

  test("words of a language speak for its letters", () => {
    expect(chart("schwarz weiß gr bl")).toBe("BK WH GY BU");
    expect(chart("noir blanc B N")).toBe("BK WH WH BK");
  });

  test("other words in a cell are passed over", () => {
    expect(chart("Yellow_(fused) red_12V white_for_LF foo".replaceAll("_", "\u00a0"))).toBe("YE RD WH ?");
  });
});

describe("a colour inside a line", () => {
  test.each([
    ["A4: +12V constant (yellow)", "yellow", "YE"],
    ["1 – Yellow – Battery", "Yellow", "YE"],
    ["WHT/BLK  LF spk -", "WHT/BLK", "WH/BK"],
    ["rear left + violet w/ black stripe", "violet w/ black stripe", "VT/BK"],
    ["Pin 3 lt grn 0.75 illumination", "lt grn", "GN"],
    ["A1 BK ground", "BK", "BK"],
    ["A1 W-B GND", "W-B", "WH/BK"],
    ["12 WHBK 0.5", "WHBK", "WH/BK"],
    ["3 12V ACC RD 18AWG", "RD", "RD"],
    ["OR/WH illum", "OR/WH", "OG/WH"],
    ["3 sw/ge Lautsprecher", "sw/ge", "BK/YE"],
    ["Kl. 30 rt 2,5", "rt", "RD"],
    ["Tail light brown", "brown", "BN"],
    ["parking brake LT GRN (ground)", "LT GRN", "GN"],
    ["4 GREEN LIGHT FEED", "GREEN", "GN"],
    ["Yellow, black stripe: mute", "Yellow, black stripe", "YE/BK"],
    ["altavoz trasero izq. negro con raya blanca", "negro con raya blanca", "BK/WH"],
    ["antenne bleu clair", "bleu clair", "BU"],
    ["głośnik lewy biało-czarny", "biało-czarny", "WH/BK"],
    ["protective earth green and yellow", "green and yellow", "GNYE"],
  ])("%s", (line, words, colour) => {
    const span = colourSpan(line)!;
    expect(line.slice(span.start, span.end)).toBe(words);
    expect(writeColour(span.colour)).toBe(colour);
  });

  test.each([
    "reduced power",
    "ROT sensor",
    "green light",
    "oil warning red lamp",
    "red LED output",
    "BK up lamp",
    "left/right L/R",
    "B/U lamp",
    "S/W",
    "A/C clutch",
    "O/S N/S",
    "sub out",
    "no connection",
    "front FL FR RR GR",
    "OR IN VI",
    "CAN-H",
    "B+ R",
    "TAN/BLK remote",
    "fuse block, range switch",
    "redundant credit, bluetooth",
  ])("%s holds none", (line) => {
    expect(colourSpan(line)).toBeNull();
  });
});

describe("properties", () => {
  const cell = fc.constantFrom(
    ..."B R W Y G L BR P GR V SW ws rt gn GE bl BLK wht Yellow schwarz B/W G-R white/black BK GN noir N U x1 beige".split(
      " ",
    ),
  );

  test("order, repetition and letter case of the cells change nothing", () => {
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 14 }), fc.integer(), (texts, seed) => {
        const before = readColours(texts);
        const order = texts
          .map((_, index) => index)
          .sort((a, b) => ((a * 31 + seed) % 7) - ((b * 31 + seed) % 7));
        const shuffled = readColours(order.map((index) => texts[index]!));
        expect(shuffled).toEqual(order.map((index) => before[index]));
        expect(readColours([...texts, ...texts])).toEqual([...before, ...before]);
        expect(readColours(texts.map((text) => text.toUpperCase()))).toEqual(before);
        expect(readColours(texts.map((text) => text.toLowerCase()))).toEqual(before);
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  test("any separator reads the same", () => {
    for (const separator of ["/", "-", " - ", " / ", "–", "+", "\\", "_", " ", ".", " with ", " mit "]) {
      expect([separator, read(`white${separator}black`)]).toEqual([separator, "WH/BK"]);
    }
  });

  test("any text is answered, and a span lies within it and reads the same in lower case", () => {
    const words = fc.constantFrom(
      "red",
      "W-B",
      "lt",
      "GRN",
      "stripe",
      "/",
      "light",
      "12V",
      "(",
      "A4",
      "with",
      "BK",
    );
    const line = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(words).map((list) => list.join(" ")),
    );
    fc.assert(
      fc.property(line, (text) => {
        readColours([text]);
        readColourText(text);
        const span = colourSpan(text);
        if (!span) return;
        expect(span.start).toBeGreaterThanOrEqual(0);
        expect(span.end).toBeGreaterThan(span.start);
        expect(span.end).toBeLessThanOrEqual(text.length);
        expect(readColourText(text.slice(span.start, span.end))).toEqual(span.colour);
        if (text.toLowerCase().length === text.length) expect(colourSpan(text.toLowerCase())).toEqual(span);
      }),
      { seed: 5, numRuns: 500 },
    );
  });
});
