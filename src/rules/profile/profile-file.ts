import * as z from "zod/mini";
import type { Harness } from "../../graph/harness.ts";
import { type Found, placed } from "../../graph/parse/place.ts";
import { MAX_PROBLEMS, type Problem } from "../../graph/parse/problem.ts";
import { type FileKind, readJson } from "../../graph/parse/read-json.ts";
import { readValue } from "../../graph/parse/read-value.ts";
import { rules } from "../../graph/schema/rules.ts";
import { object } from "../../graph/schema/values.ts";

export type RulesSetting = Harness["settings"]["rules"];

export const PROFILE_FILE_VERSION = 1;

const shape = object({
  format: z.literal("pigtail-profile"),
  formatVersion: z.int().check(z.minimum(1)),
  rules,
});

const PROFILE_FILE: FileKind = {
  format: "pigtail-profile",
  notThis: "not-a-profile",
  name: "profile file",
  looks: "a profile file, which holds a shop's limits and rules",
  ending: ".profile.json",
  maxCharacters: 4_000_000,
  whatIsLarge: "what is no profile",
};

export type ParsedProfile =
  | { readonly ok: true; readonly rules: RulesSetting; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads the text of a `.profile.json` file: a shop's limits, habits and own rules. Never throws on bad input.
 * @returns what a harness's settings take, or at most 100 problems, each with its place and what to do
 */
export function parseProfile(text: string): ParsedProfile {
  const read = readJson(text, PROFILE_FILE);
  if (!read.ok) return read;
  const found: Found[] = [];
  const profile = readValue(shape, read.raw, [], found) as { readonly rules: RulesSetting } | null;
  if (!profile || found.length)
    return { ok: false, problems: placed(found.slice(0, MAX_PROBLEMS), read.body) };
  const version = read.raw.formatVersion as number;
  const notes =
    version > PROFILE_FILE_VERSION
      ? [
          `This profile is of format version ${version}; this Pigtail knows version ${PROFILE_FILE_VERSION}. What it does not know is kept as it is.`,
        ]
      : [];
  return { ok: true, rules: profile.rules, notes };
}

/** The file's text: two-space JSON with a final line feed. */
export function serialiseProfile(own: RulesSetting): string {
  const file = { format: "pigtail-profile", formatVersion: PROFILE_FILE_VERSION, rules: own };
  return `${JSON.stringify(file, null, 2)}\n`;
}
