import { readFileSync } from "node:fs";

/** This program's version, as its package says. */
export function version(): string {
  const file = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  return (JSON.parse(file) as { version: string }).version;
}
