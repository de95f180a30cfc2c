/** What stops a command: arguments or input that it cannot work with. Printed as it is; the exit code is 2. */
export class Unusable extends Error {}

export const EXIT = { clean: 0, findings: 1, unusable: 2 } as const;

/**
 * Text of a file as it may go to a terminal: what would steer, hide or break a line is replaced. Line feeds of our
 * own are added after this.
 */
export function plain(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, "\ufffd");
}

/** One line, or several, to the standard output. */
export function say(text: string): void {
  process.stdout.write(`${text}\n`);
}

export function complain(text: string): void {
  process.stderr.write(`${text}\n`);
}

/** "1 wire", "2 wires". */
export function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? "" : "s"}`;
}
