import { emptyHarness } from "../graph/make.ts";
import { serialise } from "../graph/parse/parse.ts";
import { readArguments } from "./arguments.ts";
import { mustBeNew, writeWhole } from "./files.ts";
import { EXIT } from "./unusable.ts";

export const usage = "pigtail new [FILE] [--force]";

/** Writes an empty harness to a file, or to the standard output where none is named. */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    { force: { type: "boolean" } },
    { usage, least: 0, most: 1 },
  );
  const path = positionals[0] ?? "-";
  if (!values.force) mustBeNew(path);
  writeWhole(path, serialise(emptyHarness()));
  return EXIT.clean;
}
