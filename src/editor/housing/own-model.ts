import type { KeptConnector } from "../../graph/own-connector/kept-connector.ts";
import type { ParsedConnector } from "../../graph/own-connector/parse-connector.ts";
import { parseConnector } from "../../graph/own-connector/parse-connector.ts";
import type { Problem } from "../../graph/parse/problem.ts";
import { fileNameOf } from "../files/files-model.ts";

/** A connector as the browser keeps it: the text of its file, so that it is read with the same care. */
export type OwnRecord = { readonly id: string; readonly text: string; readonly keptAt: number };

export type Own = {
  readonly id: string;
  readonly keptAt: number;
  readonly connector: KeptConnector;
};

/** One that is kept and cannot be read, by another version or by damage. It is not thrown away. */
export type UnreadableOwn = { readonly record: OwnRecord; readonly problems: readonly Problem[] };

export type OwnList = { readonly own: readonly Own[]; readonly unreadable: readonly UnreadableOwn[] };

/** Reads what the browser keeps; by name, and of one name the newest first. */
export function readOwn(records: readonly OwnRecord[]): OwnList {
  const own: Own[] = [];
  const unreadable: UnreadableOwn[] = [];
  for (const record of records) {
    const read: ParsedConnector = parseConnector(record.text);
    if (read.ok) own.push({ id: record.id, keptAt: record.keptAt, connector: read.connector });
    else unreadable.push({ record, problems: read.problems });
  }
  own.sort((a, b) => byName.compare(a.connector.name, b.connector.name) || b.keptAt - a.keptAt);
  return { own, unreadable };
}

const byName = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

/** One name in the eyes of a person: letter case, spaces and how an accent is stored make no other. */
export function foldName(name: string): string {
  return name.normalize("NFC").trim().replace(/\s+/gu, " ").toLowerCase();
}

/** The one that has this name already, other than the one that is being renamed. */
export function sameName(list: readonly Own[], name: string, except: string | null = null): Own | null {
  const folded = foldName(name);
  return list.find((one) => one.id !== except && foldName(one.connector.name) === folded) ?? null;
}

/** "Radio plug (2)": the first that is free. */
export function freeName(list: readonly Own[], name: string): string {
  const plain = name
    .trim()
    .replace(/ \(\d+\)$/, "")
    .slice(0, 380);
  for (let number = 2; ; number++) {
    const next = `${plain} (${number})`;
    if (!sameName(list, next)) return next;
  }
}

export function connectorFileName(name: string): string {
  return fileNameOf(name).replace(/\.harness\.json$/, ".connector.json");
}

/** "8 cavities of the vehicle, seen from the wire side" */
export function sayKept({ cavities, side, view }: KeptConnector): string {
  const count = `${cavities.length} ${cavities.length === 1 ? "cavity" : "cavities"}`;
  const whose = side === "vehicle" ? "the vehicle" : "the new equipment";
  return `${count} of ${whose}, seen from the ${view.replace("-", " ")}`;
}
