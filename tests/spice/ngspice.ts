import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const HOW_TO_GET_IT =
  "ngspice did not run. Install it (Debian: `apt-get install ngspice` as root; `npm test` does it), " +
  "then run the tests again.";

/**
 * Operating points of many decks by one ngspice process.
 * @returns for each deck its node voltages by name; null where ngspice found none
 * @throws Error that says how to install ngspice, or what it said
 */
export function runDecks(decks: readonly string[]): readonly (ReadonlyMap<string, number> | null)[] {
  const folder = mkdtempSync(join(tmpdir(), "pigtail-spice-"));
  try {
    const script = ["* decks one after another", ".control", "set filetype=ascii", "set noaskquit"];
    decks.forEach((deck, index) => {
      writeFileSync(join(folder, `${index}.cir`), deck);
      script.push(`source ${index}.cir`, "op", `write ${index}.raw`, "destroy all", "remcirc");
    });
    script.push("quit 0", ".endc", ".end", "");
    writeFileSync(join(folder, "all.cir"), script.join("\n"));
    const ran = spawnSync("ngspice", ["-b", "all.cir"], { cwd: folder, encoding: "utf8", timeout: 60_000 });
    if (ran.error && "code" in ran.error && ran.error.code === "ENOENT") throw new Error(HOW_TO_GET_IT);
    if (ran.status !== 0) throw new Error(`ngspice ended with ${ran.status}:\n${ran.stderr.slice(-2000)}`);
    return decks.map((_, index) => readRaw(join(folder, `${index}.raw`)));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** An ASCII raw file of one point: a list of names, then as many values. */
function readRaw(path: string): ReadonlyMap<string, number> | null {
  let lines: string[];
  try {
    lines = readFileSync(path, "utf8").split("\n");
  } catch {
    return null;
  }
  const names = lines
    .slice(lines.indexOf("Variables:") + 1, lines.indexOf("Values:"))
    .map((line) => line.trim().split(/\s+/)[1] ?? "");
  const values = lines
    .slice(lines.indexOf("Values:") + 1)
    .join(" ")
    .trim()
    .split(/\s+/)
    .slice(1)
    .map(Number);
  return new Map(names.map((name, index) => [name, values[index] ?? Number.NaN]));
}
