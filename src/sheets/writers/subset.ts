/** The tables that a font file needs and that stay as they are, whatever glyphs it holds. */
const KEPT = ["OS/2"] as const;

/**
 * A small font file with only the glyphs of some text, for a drawing that carries its own typeface. Written from
 * the OpenType specification. Kerning, hinting and names are left out: drawings use none of them.
 * @param font a static TrueType file
 * @param text all that will be written; what the font lacks, or lies beyond the basic plane, is passed over
 * @returns a TrueType file; its name is ours, since a cut-down font may not bear the reserved one
 * @throws RangeError if the file is not a static TrueType font
 */
export function subsetFont(font: Uint8Array, text: string): Uint8Array {
  const source = new Source(font);
  const characters = new Map<number, number>();
  const wanted = [0];
  for (const character of new Set(text)) {
    const code = character.codePointAt(0) ?? 0;
    const glyph = code < 0xffff ? source.glyphOf(code) : 0;
    if (glyph === 0) continue;
    characters.set(code, glyph);
    wanted.push(glyph);
  }
  const glyphs = source.withComponents(wanted);
  const place = new Map(glyphs.map((glyph, index) => [glyph, index]));
  const outlines = glyphs.map((glyph) => source.outline(glyph, place));
  const advances = new Writer();
  for (const glyph of glyphs) advances.u16(source.advance(glyph)).u16(source.sideBearing(glyph));
  const offsets = new Writer();
  let end = 0;
  for (const outline of outlines) {
    offsets.u32(end);
    end += outline.length;
  }
  offsets.u32(end);
  const head = source.table("head").slice();
  new DataView(head.buffer).setUint16(50, 1); // offsets are long
  new DataView(head.buffer).setUint32(8, 0); // check sum, not asked for
  const hhea = source.table("hhea").slice();
  new DataView(hhea.buffer).setUint16(34, glyphs.length);
  const maxp = source.table("maxp").slice();
  new DataView(maxp.buffer).setUint16(4, glyphs.length);
  const codes = [...characters].map(([code, glyph]): [number, number] => [code, place.get(glyph) ?? 0]);
  return fontFile(
    new Map<string, Uint8Array>([
      ...KEPT.map((tag): [string, Uint8Array] => [tag, source.table(tag)]),
      ["cmap", characterMap(codes.sort((a, b) => a[0] - b[0]))],
      ["glyf", joined(outlines)],
      ["head", head],
      ["hhea", hhea],
      ["hmtx", advances.bytes()],
      ["loca", offsets.bytes()],
      ["maxp", maxp],
      ["name", names("Pigtail Sheet")],
      ["post", new Writer().u32(0x00030000).zeros(28).bytes()],
    ]),
  );
}

/** Reads glyphs out of a whole font. */
class Source {
  private readonly tables = new Map<string, Uint8Array>();
  private readonly longOffsets: boolean;
  private readonly metricCount: number;
  private readonly segments: DataView;

  constructor(font: Uint8Array) {
    const view = viewOf(font);
    for (let index = 0; index < view.getUint16(4); index++) {
      const at = 12 + index * 16;
      const start = view.getUint32(at + 8);
      this.tables.set(
        String.fromCharCode(...font.subarray(at, at + 4)),
        font.subarray(start, start + view.getUint32(at + 12)),
      );
    }
    if (this.tables.has("fvar")) throw new RangeError("a variable font cannot be cut down");
    this.longOffsets = viewOf(this.table("head")).getInt16(50) === 1;
    this.metricCount = viewOf(this.table("hhea")).getUint16(34);
    this.segments = this.findSegments();
  }

  table(tag: string): Uint8Array {
    const found = this.tables.get(tag);
    if (!found) throw new RangeError(`not a TrueType font: it has no table "${tag}"`);
    return found;
  }

  /** The cmap subtable of format 4, which every font for the basic plane has. */
  private findSegments(): DataView {
    const cmap = this.table("cmap");
    const view = viewOf(cmap);
    for (let index = 0; index < view.getUint16(2); index++) {
      const at = view.getUint32(8 + index * 8);
      if (view.getUint16(at) === 4) return viewOf(cmap.subarray(at));
    }
    throw new RangeError("not a font for Unicode text: it has no character map of format 4");
  }

  glyphOf(code: number): number {
    const view = this.segments;
    const doubled = view.getUint16(6);
    for (let at = 14; at < 14 + doubled; at += 2) {
      if (view.getUint16(at) < code) continue;
      const start = view.getUint16(at + doubled + 2);
      if (start > code) return 0;
      const delta = view.getUint16(at + 2 * doubled + 2);
      const rangeAt = at + 3 * doubled + 2;
      const range = view.getUint16(rangeAt);
      if (range === 0) return (code + delta) & 0xffff;
      const glyph = view.getUint16(rangeAt + range + 2 * (code - start));
      return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
    }
    return 0;
  }

  advance(glyph: number): number {
    return viewOf(this.table("hmtx")).getUint16(4 * Math.min(glyph, this.metricCount - 1));
  }

  sideBearing(glyph: number): number {
    const at =
      glyph < this.metricCount ? 4 * glyph + 2 : 4 * this.metricCount + 2 * (glyph - this.metricCount);
    return viewOf(this.table("hmtx")).getUint16(at);
  }

  /** Glyphs and the glyphs that they are put together from, each once. */
  withComponents(glyphs: readonly number[]): number[] {
    const all = new Set(glyphs);
    for (const glyph of all) for (const { index } of components(this.data(glyph))) all.add(index);
    return [...all];
  }

  /** A glyph's outline, its components renumbered, padded to four bytes. */
  outline(glyph: number, place: ReadonlyMap<number, number>): Uint8Array {
    const data = this.data(glyph);
    const copy = new Uint8Array((data.length + 3) & ~3);
    copy.set(data);
    for (const { at, index } of components(data)) viewOf(copy).setUint16(at, place.get(index) ?? 0);
    return copy;
  }

  private data(glyph: number): Uint8Array {
    const loca = viewOf(this.table("loca"));
    const offset = (index: number): number =>
      this.longOffsets ? loca.getUint32(4 * index) : 2 * loca.getUint16(2 * index);
    return this.table("glyf").subarray(offset(glyph), offset(glyph + 1));
  }
}

/** The parts of a composite glyph: which glyph, and where its number stands. */
function components(data: Uint8Array): { readonly at: number; readonly index: number }[] {
  const view = viewOf(data);
  if (data.length < 10 || view.getInt16(0) >= 0) return [];
  const found: { at: number; index: number }[] = [];
  let at = 10;
  for (let more = true; more; ) {
    const flags = view.getUint16(at);
    found.push({ at: at + 2, index: view.getUint16(at + 2) });
    at += 4 + (flags & 0x0001 ? 4 : 2);
    if (flags & 0x0008) at += 2;
    else if (flags & 0x0040) at += 4;
    else if (flags & 0x0080) at += 8;
    more = (flags & 0x0020) !== 0;
  }
  return found;
}

/** A cmap with one subtable of format 4 and one segment a character. */
function characterMap(codes: readonly (readonly [number, number])[]): Uint8Array {
  const segments = [
    ...codes.map(([code, glyph]) => [code, (glyph - code) & 0xffff] as const),
    [0xffff, 1] as const,
  ];
  const count = segments.length;
  const power = 2 ** Math.floor(Math.log2(count));
  const table = new Writer().u16(0).u16(1).u16(3).u16(1).u32(12);
  table
    .u16(4)
    .u16(16 + 8 * count)
    .u16(0)
    .u16(2 * count);
  table
    .u16(2 * power)
    .u16(Math.log2(power))
    .u16(2 * (count - power));
  for (const [code] of segments) table.u16(code);
  table.u16(0);
  for (const [code] of segments) table.u16(code);
  for (const [, delta] of segments) table.u16(delta);
  return table.zeros(2 * count).bytes();
}

function names(family: string): Uint8Array {
  const ids = [1, 2, 4, 6];
  const values = ids.map((id) => (id === 2 ? "Regular" : id === 6 ? family.replaceAll(" ", "") : family));
  const table = new Writer()
    .u16(0)
    .u16(ids.length)
    .u16(6 + 12 * ids.length);
  let offset = 0;
  for (const [index, id] of ids.entries()) {
    const length = 2 * (values[index]?.length ?? 0);
    table.u16(3).u16(1).u16(0x409).u16(id).u16(length).u16(offset);
    offset += length;
  }
  for (const character of values.join("")) table.u16(character.charCodeAt(0));
  return table.bytes();
}

function fontFile(tables: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const sorted = [...tables].sort(([a], [b]) => (a < b ? -1 : 1));
  const power = 2 ** Math.floor(Math.log2(sorted.length));
  const file = new Writer().u32(0x00010000).u16(sorted.length);
  file
    .u16(16 * power)
    .u16(Math.log2(power))
    .u16(16 * (sorted.length - power));
  let offset = 12 + 16 * sorted.length;
  for (const [tag, table] of sorted) {
    for (const letter of tag) file.u8(letter.charCodeAt(0));
    file.u32(checkSum(table)).u32(offset).u32(table.length);
    offset += (table.length + 3) & ~3;
  }
  for (const [, table] of sorted) file.raw(table).zeros(-table.length & 3);
  return file.bytes();
}

function checkSum(table: Uint8Array): number {
  let sum = 0;
  for (let at = 0; at < table.length; at++) sum = (sum + ((table[at] ?? 0) << (24 - 8 * (at & 3)))) >>> 0;
  return sum;
}

/** Collects big-endian numbers. */
class Writer {
  private readonly parts: number[] = [];

  u8(value: number): this {
    this.parts.push(value & 0xff);
    return this;
  }
  u16(value: number): this {
    return this.u8(value >> 8).u8(value);
  }
  u32(value: number): this {
    return this.u16(value >>> 16).u16(value & 0xffff);
  }
  zeros(count: number): this {
    for (let index = 0; index < count; index++) this.parts.push(0);
    return this;
  }
  raw(bytes: Uint8Array): this {
    for (const byte of bytes) this.parts.push(byte);
    return this;
  }
  bytes(): Uint8Array {
    return Uint8Array.from(this.parts);
  }
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const writer = new Writer();
  for (const part of parts) writer.raw(part);
  return writer.bytes();
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
