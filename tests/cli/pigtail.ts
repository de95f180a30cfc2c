import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { inject, onTestFinished } from "vitest";

const bin = fileURLToPath(new URL("../../src/cli/pigtail.mjs", import.meta.url));

export const sample = (id: string): string =>
  fileURLToPath(new URL(`../../samples/${id}.harness.json`, import.meta.url));

export type Ended = { readonly code: number | null; readonly out: string; readonly errors: string };

/**
 * Runs the command line as a person does, in a process of its own.
 * @param asInstalled through `src/cli/pigtail.mjs`, which reads the TypeScript each time; else as `bundled.ts` has made it
 */
export function pigtail(
  args: readonly string[],
  {
    input = "",
    cwd,
    asInstalled = false,
  }: { readonly input?: string; readonly cwd?: string; readonly asInstalled?: boolean } = {},
): Promise<Ended> {
  const script = asInstalled ? bin : inject("bundledCli");
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, ...args], { cwd, stdio: "pipe" });
    let out = "";
    let errors = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      out += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      errors += text;
    });
    // A command that does not read its input may end before it is written.
    child.stdin.on("error", () => {});
    child.on("error", reject).on("close", (code) => resolve({ code, out, errors }));
    child.stdin.end(input);
  });
}

/** A folder that goes when the test ends. */
export function folder(): string {
  const path = mkdtempSync(join(tmpdir(), "pigtail-cli-"));
  onTestFinished(() => rmSync(path, { recursive: true, force: true }));
  return path;
}
