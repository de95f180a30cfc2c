import { fold } from "../find/fold.ts";

/** One command as the list shows it. */
export type Listed = {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  readonly keys: string;
  readonly possible: boolean;
};

/**
 * How well a typed text fits a name: every word typed must begin a word of the name, or stand inside it.
 * @returns `null` where it does not fit; else lower is better
 */
export function fits(typed: string, name: string): number | null {
  const words = fold(typed).trim().split(" ").filter(Boolean);
  const text = fold(name);
  const starts = text.split(/[^\p{L}\p{N}]+/u);
  let score = 0;
  for (const word of words) {
    const begins = starts.findIndex((start) => start.startsWith(word));
    if (begins >= 0) score += begins;
    else if (text.includes(word)) score += 20;
    else return null;
  }
  return score;
}

/**
 * The commands to show for what was typed. Nothing typed: those used last come first, then all in their order.
 * What cannot be done now stays in the list, after what can, so that it can be learned that it exists.
 */
export function listCommands(
  commands: readonly Listed[],
  typed: string,
  recent: readonly string[],
): readonly Listed[] {
  const scored = commands.flatMap((command, order) => {
    const fit = fits(typed, `${command.name} ${command.group}`);
    if (fit === null) return [];
    const used = recent.indexOf(command.id);
    return [{ command, fit, used: used < 0 ? recent.length : used, order }];
  });
  scored.sort(
    (a, b) =>
      Number(b.command.possible) - Number(a.command.possible) ||
      a.fit - b.fit ||
      a.used - b.used ||
      a.order - b.order,
  );
  return scored.map(({ command }) => command);
}

/** The commands used last, newest first, each once. */
export function withUsed(recent: readonly string[], id: string, most = 8): readonly string[] {
  return [id, ...recent.filter((other) => other !== id)].slice(0, most);
}
