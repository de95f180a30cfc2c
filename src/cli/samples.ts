import { readFileSync } from "node:fs";
import { SAMPLE_LIST } from "../../samples/list.ts";
import { readArguments } from "./arguments.ts";
import { mustBeNew, writeWhole } from "./files.ts";
import { EXIT, plain, say, Unusable } from "./unusable.ts";

export const usage = "pigtail samples [NAME] [-o FILE] [--force]";

/** Lists the samples, or copies one to a file or the standard output. */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    { output: { type: "string", short: "o" }, force: { type: "boolean" } },
    { usage, least: 0, most: 1 },
  );
  const [name] = positionals;
  if (name === undefined) {
    if (values.output !== undefined) throw new Unusable(`Which sample?\nUsage: ${usage}`);
    const widest = Math.max(...SAMPLE_LIST.map(({ id }) => id.length));
    for (const { id, title } of SAMPLE_LIST) say(`${id.padEnd(widest)}  ${title}`);
    return EXIT.clean;
  }
  const path = values.output ?? "-";
  const text = readSample(name);
  if (!values.force) mustBeNew(path);
  writeWhole(path, text);
  return EXIT.clean;
}

/** The text of a sample's file. */
export function readSample(name: string): string {
  if (!SAMPLE_LIST.some(({ id }) => id === name)) {
    const known = SAMPLE_LIST.map(({ id }) => id).join(", ");
    throw new Unusable(`There is no sample ${plain(name)}. → There are ${known}.`);
  }
  return readFileSync(new URL(`../../samples/${name}.harness.json`, import.meta.url), "utf8");
}
