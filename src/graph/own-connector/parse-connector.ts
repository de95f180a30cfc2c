import { type Found, placed } from "../parse/place.ts";
import { MAX_PROBLEMS, type Problem } from "../parse/problem.ts";
import { type FileKind, readJson } from "../parse/read-json.ts";
import { readValue } from "../parse/read-value.ts";
import { KEPT_CONNECTOR_VERSION, type KeptConnector, keptConnectorShape } from "./kept-connector.ts";
import { migrateConnector } from "./migrate-connector.ts";

export type ParsedConnector =
  | { readonly ok: true; readonly connector: KeptConnector; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const CONNECTOR_FILE: FileKind = {
  format: "pigtail-connector",
  notThis: "not-a-connector",
  name: "connector file",
  looks: "a connector file, which is flat and has some ten thousand values at most",
  ending: ".connector.json",
  // 2 000 cavities, each with a text of 400 characters, come to about half of this.
  maxCharacters: 4_000_000,
  whatIsLarge: "what is no connector",
};

/**
 * Reads the text of a `.connector.json` file. Never throws on bad input; the time is bounded by the text's length.
 * Unknown fields are kept. A file of a newer version is read as far as it is understood, with a note.
 * @returns the connector, or at most 100 problems, each with its place, what was found and what to do
 */
export function parseConnector(text: string): ParsedConnector {
  const read = readJson(text, CONNECTOR_FILE);
  if (!read.ok) return read;
  const found: Found[] = [];
  const connector = readValue(
    keptConnectorShape,
    migrateConnector(read.raw),
    [],
    found,
  ) as KeptConnector | null;
  const version = read.raw.formatVersion;
  const newer = typeof version === "number" && version > KEPT_CONNECTOR_VERSION;
  if (connector) findWrongFace(connector, found);
  if (!connector || found.length > 0) {
    const hint = newer
      ? ` Or open it with a newer Pigtail: the file is of format version ${version}, this one knows ${KEPT_CONNECTOR_VERSION}.`
      : "";
    return {
      ok: false,
      problems: placed(found.slice(0, MAX_PROBLEMS), read.body).map((one) => ({
        ...one,
        next: one.next + hint,
      })),
    };
  }
  const notes = newer
    ? [
        `This connector is of format version ${version}; this Pigtail knows version ${KEPT_CONNECTOR_VERSION}. What it does not know is kept as it is.`,
      ]
    : [];
  return { ok: true, connector, notes };
}

/** A face shows cavities that the connector has, each once: it is drawn, and read on somebody's back, from this. */
function findWrongFace(connector: KeptConnector, found: Found[]): void {
  const count = connector.cavities.length;
  const seen = new Set<number>();
  for (const [index, row] of connector.rows.entries()) {
    for (const [column, number] of row.entries()) {
      if (number === 0) continue;
      const twice = seen.has(number);
      seen.add(number);
      if (number <= count && !twice) continue;
      if (found.length >= MAX_PROBLEMS) return;
      found.push({
        path: ["rows", index, column],
        code: "dangling-reference",
        found: twice ? `cavity ${number} a second time` : `cavity ${number}`,
        expected: twice ? "each cavity once in the face" : `1 to ${count}, or 0 for a gap`,
        next: "Correct the number, or set it to 0.",
      });
    }
  }
}

/** The file's text: two-space JSON with a final line feed. */
export function serialiseConnector(connector: KeptConnector): string {
  return `${JSON.stringify(connector, null, 2)}\n`;
}
