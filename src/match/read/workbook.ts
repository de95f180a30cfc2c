import { strToU8, zipSync } from "fflate";
import { MOST_ROWS } from "./lines.ts";
import { listArchive, type Packed, unpackText } from "./unpack.ts";

/** A sheet as rows of text; the first row of the sheet is the first here. */
export type Sheet = { readonly name: string; readonly rows: readonly (readonly string[])[] };
export type Workbook =
  | { readonly sheets: readonly Sheet[]; readonly remarks: readonly string[] }
  | { readonly problem: string };

const MOST_SHEETS = 12;
const MOST_CHARACTERS = 8_000_000;
/** Far below this stands the last row of any chart, however many blank ones lie between. */
const LAST_ROW = 5 * MOST_ROWS;

/**
 * Opens a spreadsheet (.xlsx, ISO/IEC 29500). Formulas count by the value that was saved with them, and are never
 * worked out. Of each sheet no more is unpacked than the rows that are taken, so that size does not matter.
 */
export async function openWorkbook(bytes: Uint8Array): Promise<Workbook> {
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf)
    return {
      problem:
        "This is a spreadsheet of an older kind, or one with a password. Save it as .xlsx without one.",
    };
  const entries = listArchive(bytes);
  if (!entries) return { problem: "This file is damaged, or is no spreadsheet." };
  if (!entries.some(({ name }) => /^\/?xl\/workbook\.xml$/i.test(name)))
    return { problem: "This is a packed file, but no spreadsheet (.xlsx)." };
  const remarks: string[] = [];
  const files: Record<string, Uint8Array> = {};
  const merged = new Map<string, readonly string[]>();
  let sheets = 0;
  let strings: Packed | null = null;
  let lastString = -1;
  for (const entry of entries) {
    if (!/^\/?(?:xl\/|_rels\/|\[Content_Types\])/i.test(entry.name) || !/\.(?:xml|rels)$/i.test(entry.name))
      continue;
    if (/sharedStrings\.xml$/i.test(entry.name)) {
      strings = entry;
      continue;
    }
    if (!/xl\/worksheets\/[^/]+\.xml$/i.test(entry.name)) {
      if (!/(?:workbook|styles)\.xml(?:\.rels)?$|\[Content_Types\]/i.test(entry.name)) continue;
      const part = unpackText(entry, MOST_CHARACTERS);
      if (!part?.isWhole) return { problem: "This spreadsheet is damaged, or not made to be read." };
      files[entry.name] = strToU8(part.text);
      continue;
    }
    const isTaken = ++sheets <= MOST_SHEETS;
    const part = isTaken ? unpackText(entry, MOST_CHARACTERS, hasRowsEnough) : { text: "", isWhole: false };
    if (!part) return { problem: "This spreadsheet is damaged: a sheet of it cannot be unpacked." };
    const cut = cutSheet(part.text, part.isWhole);
    if (cut.isCut && isTaken) remarks.push(`Only the first ${MOST_ROWS} rows of a sheet are read.`);
    for (const [, index] of cut.xml.matchAll(
      /\bt="s"[^>]*>(?:<f[\s\S]*?(?:<\/f>|\/>))?\s*<(?:\w+:)?v>(\d+)</g,
    ))
      lastString = Math.max(lastString, Number(index));
    files[entry.name] = strToU8(cut.xml);
    merged.set(entry.name, cut.merged);
  }
  if (strings) {
    const text = cutStrings(strings, lastString);
    if (text === null) return { problem: "This spreadsheet is damaged: its texts cannot be unpacked." };
    files[strings.name] = strToU8(text);
  }
  if (sheets > MOST_SHEETS) remarks.push(`Only the first ${MOST_SHEETS} sheets are looked at, of ${sheets}.`);
  try {
    return { sheets: await readSheets(files, merged), remarks: [...new Set(remarks)] };
  } catch {
    return { problem: "This spreadsheet is damaged, or made in a way that cannot be read." };
  }
}

function hasRowsEnough(text: string): boolean {
  return (text.match(/<\/(?:\w+:)?row>/g)?.length ?? 0) > MOST_ROWS + 1;
}

type Cut = { readonly xml: string; readonly isCut: boolean; readonly merged: readonly string[] };

/** Leaves the rows that are taken, and cells that any reader can bear. */
function cutSheet(text: string, isWhole: boolean): Cut {
  const start = /<((?:\w+:)?)sheetData\b[^>]*>/.exec(text);
  const empty =
    '<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData></sheetData></worksheet>';
  if (!start || start[0].endsWith("/>")) return { xml: empty, isCut: false, merged: [] };
  const prefix = start[1]!;
  const rows: string[] = [];
  const pattern = new RegExp(`<${prefix}row\\b([^>]*?)(?:/>|>([\\s\\S]*?)</${prefix}row>)`, "g");
  pattern.lastIndex = start.index + start[0].length;
  let isCut = !isWhole;
  let last = 0;
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
    const number = Number(/\br="(\d+)"/.exec(match[1]!)?.[1] ?? last + 1);
    if (rows.length >= MOST_ROWS || number > LAST_ROW || number <= last) {
      isCut = true;
      break;
    }
    last = number;
    rows.push(`<row r="${number}">${plainCells(match[2] ?? "", prefix)}</row>`);
  }
  const merged = isWhole
    ? [...text.matchAll(/mergeCell\b[^>]*?\bref="([A-Z]{1,2}\d{1,5}:[A-Z]{1,2}\d{1,5})"/g)]
        .slice(0, 5000)
        .map(([, ref]) => ref!)
    : [];
  return { xml: empty.replace("></sheetData>", `>${rows.join("")}</sheetData>`), isCut, merged };
}

/** Cells without a saved value are blank; errors are text; what stands beyond column ZZ is no chart. */
function plainCells(row: string, prefix: string): string {
  const pattern = new RegExp(`<${prefix}c\\b([^>]*?)(?:/>|>([\\s\\S]*?)</${prefix}c>)`, "g");
  let result = "";
  for (const [, attributes = "", inside = ""] of row.matchAll(pattern)) {
    const address = /\br="([A-Z]{1,2}\d{1,7})"/.exec(attributes)?.[1];
    if (!address) continue;
    const type = /\bt="(\w+)"/.exec(attributes)?.[1] ?? "n";
    const style = /\bs="(\d+)"/.exec(attributes)?.[1];
    const value = new RegExp(`<${prefix}v\\b[^>]*>([\\s\\S]*?)</${prefix}v>`).exec(inside)?.[1];
    const inline = new RegExp(`<${prefix}is\\b[^>]*>[\\s\\S]*?</${prefix}is>`).exec(inside)?.[0];
    const open = `<c r="${address}"${style === undefined ? "" : ` s="${style}"`}`;
    if (inline !== undefined && type === "inlineStr")
      result += `${open} t="inlineStr">${prefix ? inline.replaceAll(prefix, "") : inline}</c>`;
    else if (value !== undefined && value !== "")
      result += `${open} t="${type === "e" ? "str" : type}"><v>${value}</v></c>`;
  }
  return result;
}

/** The texts that the taken rows point to, and none behind them. */
function cutStrings(entry: Packed, last: number): string | null {
  const isEnough = (text: string) => (text.match(/<\/(?:\w+:)?si>/g)?.length ?? 0) > last;
  const part = unpackText(entry, MOST_CHARACTERS, isEnough);
  if (!part) return null;
  const end = /<(\/(?:\w+:)?)sst>\s*$/.exec(part.text.slice(-60));
  if (part.isWhole && end) return part.text;
  const open = /<((?:\w+:)?)sst\b[^>]*>/.exec(part.text);
  if (!open) return null;
  const close = `</${open[1]}si>`;
  const at = part.text.lastIndexOf(close);
  return at < 0 ? null : `${part.text.slice(0, at + close.length)}</${open[1]}sst>`;
}

async function readSheets(
  files: Readonly<Record<string, Uint8Array>>,
  merged: ReadonlyMap<string, readonly string[]>,
): Promise<readonly Sheet[]> {
  // Loaded where it is needed: a page that reads no spreadsheet does not pay for it.
  const { default: readWorkbook } = await import("read-excel-file/universal");
  const packed = zipSync({ ...files }, { level: 0 });
  const whole = new Uint8Array(packed).buffer;
  const sheets = await readWorkbook(whole, { parseNumber: plainNumber });
  const bySize = [...merged.values()];
  return sheets.map(({ sheet, data }, index) => {
    const rows = data.map((row) => row.map(plainCell));
    // Sheets come in the order of the workbook; their files nearly always do, and a lone sheet always.
    for (const ref of bySize[sheets.length === bySize.length ? index : -1] ?? []) fillDown(rows, ref);
    return { name: sheet, rows };
  });
}

/** 0.1 is saved as 0.10000000000000001. */
function plainNumber(text: string): string {
  const value = Number(text);
  return Number.isFinite(value) ? String(Number(value.toPrecision(12))) : text;
}

function plainCell(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (value instanceof Date) return Number.isNaN(value.getTime()) ? "" : value.toISOString().slice(0, 10);
  return String(value);
}

/** A cell merged over several rows of one column stands in each of them. */
function fillDown(rows: string[][], ref: string): void {
  const match = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(ref);
  if (!match || match[1] !== match[3]) return;
  const column = [...match[1]!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const value = rows[Number(match[2]) - 1]?.[column];
  if (!value) return;
  const to = Math.min(Number(match[4]), Number(match[2]) + 60, rows.length);
  for (let row = Number(match[2]); row < to; row++) {
    const cells = rows[row]!;
    if (cells.some((cell) => cell !== "") && cells[column] === "") cells[column] = value;
  }
}
