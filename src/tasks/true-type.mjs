/**
 * Reads just enough of a TrueType file to measure text: which code points it has and how far each one
 * advances. Written from the OpenType specification (tables head, hhea, hmtx, cmap formats 4 and 12).
 *
 * @param {Uint8Array} bytes a static TrueType font file
 * @returns {{ unitsPerEm: number, outlines: "truetype" | "cff", variable: boolean, advances: Map<number, number> }}
 *   advances by code point, in font units
 * @throws RangeError if a table that measuring needs is not there
 */
export function readTrueType(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  /** @type {Map<string, number>} */
  const tables = new Map();
  const tableCount = view.getUint16(4);
  for (let index = 0; index < tableCount; index++) {
    const at = 12 + index * 16;
    tables.set(String.fromCharCode(...bytes.subarray(at, at + 4)), view.getUint32(at + 8));
  }
  /** @param {string} tag */
  const table = (tag) => {
    const offset = tables.get(tag);
    if (offset === undefined) throw new RangeError(`the font has no table "${tag}"`);
    return offset;
  };
  const metricCount = view.getUint16(table("hhea") + 34);
  const hmtx = table("hmtx");
  /** @type {Map<number, number>} */
  const advances = new Map();
  for (const [codePoint, glyph] of readCharacterMap(view, table("cmap"))) {
    advances.set(codePoint, view.getUint16(hmtx + 4 * Math.min(glyph, metricCount - 1)));
  }
  return {
    unitsPerEm: view.getUint16(table("head") + 18),
    outlines: tables.has("glyf") ? "truetype" : "cff",
    variable: tables.has("fvar"),
    advances,
  };
}

/**
 * @param {DataView} view
 * @param {number} cmap offset of the table
 * @returns {Map<number, number>} glyph number by code point, without those that map to "no glyph"
 */
function readCharacterMap(view, cmap) {
  /** @type {Map<number, number>} */
  const glyphs = new Map();
  const count = view.getUint16(cmap + 2);
  for (let index = 0; index < count; index++) {
    const platform = view.getUint16(cmap + 4 + index * 8);
    if (platform !== 0 && platform !== 3) continue;
    const at = cmap + view.getUint32(cmap + 8 + index * 8);
    const format = view.getUint16(at);
    if (format === 4) readSegments(view, at, glyphs);
    if (format === 12) readGroups(view, at, glyphs);
  }
  return glyphs;
}

/**
 * cmap format 4: the basic plane in segments.
 * @param {DataView} view
 * @param {number} at
 * @param {Map<number, number>} glyphs
 */
function readSegments(view, at, glyphs) {
  const doubled = view.getUint16(at + 6);
  const ends = at + 14;
  const starts = ends + doubled + 2;
  const deltas = starts + doubled;
  const offsets = deltas + doubled;
  for (let index = 0; index < doubled; index += 2) {
    const end = view.getUint16(ends + index);
    const delta = view.getUint16(deltas + index);
    const offset = view.getUint16(offsets + index);
    for (let code = view.getUint16(starts + index); code <= end && code < 0xffff; code++) {
      const raw =
        offset === 0
          ? code
          : view.getUint16(offsets + index + offset + 2 * (code - view.getUint16(starts + index)));
      const glyph = offset !== 0 && raw === 0 ? 0 : (raw + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
}

/**
 * cmap format 12: all planes in groups.
 * @param {DataView} view
 * @param {number} at
 * @param {Map<number, number>} glyphs
 */
function readGroups(view, at, glyphs) {
  const count = view.getUint32(at + 12);
  for (let index = 0; index < count; index++) {
    const group = at + 16 + index * 12;
    const first = view.getUint32(group);
    const last = view.getUint32(group + 4);
    for (let code = first; code <= last; code++) glyphs.set(code, view.getUint32(group + 8) + code - first);
  }
}
