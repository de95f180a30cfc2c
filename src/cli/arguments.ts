import { type ParseArgsConfig, parseArgs } from "node:util";
import { Unusable } from "./unusable.ts";

type Options = NonNullable<ParseArgsConfig["options"]>;

/**
 * Options and operands of one command.
 * @param least and `most` how many operands it takes
 * @throws Unusable with what is wrong and how the command is used
 */
export function readArguments<const O extends Options>(
  given: readonly string[],
  options: O,
  { usage, least, most }: { readonly usage: string; readonly least: number; readonly most: number },
) {
  const parsed = tryParse(given, options, usage);
  const { length } = parsed.positionals;
  if (length < least) throw new Unusable(`Something is missing.\nUsage: ${usage}`);
  if (length > most)
    throw new Unusable(`There is no use for "${parsed.positionals[most]}".\nUsage: ${usage}`);
  return parsed;
}

function tryParse<const O extends Options>(given: readonly string[], options: O, usage: string) {
  try {
    return parseArgs({ args: [...given], options, allowPositionals: true, strict: true });
  } catch (error) {
    throw new Unusable(`${(error as Error).message}\nUsage: ${usage}`);
  }
}

/** One of several words. */
export function oneOf<T extends string>(option: string, given: string, known: readonly T[]): T {
  const found = known.find((word) => word === given);
  if (found === undefined) throw new Unusable(`${option} is one of ${known.join(", ")}, not "${given}".`);
  return found;
}
