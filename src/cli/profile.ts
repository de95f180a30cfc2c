import { statSync } from "node:fs";
import { emptyHarness } from "../graph/make.ts";
import { sayProblem } from "../graph/parse/problem.ts";
import { PROFILES } from "../graph/schema/rules.ts";
import { parseProfile, type RulesSetting } from "../rules/profile/profile-file.ts";
import { readText } from "./files.ts";
import { complain, plain, Unusable } from "./unusable.ts";

/**
 * The rules of a profile: one of the book's by name, or a shop's own from a `.profile.json` file.
 * @throws Unusable where there is neither, or the file cannot be read
 */
export function readProfile(given: string): RulesSetting {
  const profile = PROFILES.find((name) => name === given);
  if (profile) return { ...emptyHarness().settings.rules, profile };
  if (given !== "-" && !statSync(given, { throwIfNoEntry: false }))
    throw new Unusable(
      `--profile is one of ${PROFILES.join(", ")}, or a .profile.json file; there is no file ${JSON.stringify(given)}.`,
    );
  const result = parseProfile(readText(given));
  const name = plain(given);
  if (!result.ok) throw new Unusable(result.problems.map((problem) => sayProblem(problem, name)).join("\n"));
  for (const note of result.notes) complain(`${name}: ${note}`);
  return result.rules;
}
