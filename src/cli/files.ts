import { randomBytes } from "node:crypto";
import {
  closeSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import type { Harness } from "../graph/harness.ts";
import { parse } from "../graph/parse/parse.ts";
import { sayProblem } from "../graph/parse/problem.ts";
import { complain, plain, Unusable } from "./unusable.ts";

/** A harness file is read whole; what is larger than this is none. */
const MAX_BYTES = 300_000_000;
const STANDARD = "-";

/** The file as messages name it. */
export function fileName(path: string): string {
  return path === STANDARD ? "standard input" : path;
}

/**
 * Reads a harness from a file, or from the standard input where the path is "-". Notes go to the error output.
 * @throws Unusable with a line for each problem, "file:line:column: …"
 */
export function readHarness(path: string): { readonly harness: Harness; readonly text: string } {
  const name = plain(fileName(path));
  const text = readText(path);
  const result = parse(text);
  if (!result.ok) throw new Unusable(result.problems.map((problem) => sayProblem(problem, name)).join("\n"));
  for (const note of result.notes) complain(`${name}: ${note}`);
  return { harness: result.harness, text };
}

/**
 * The bytes of a file, or of the standard input where the path is "-".
 * @throws Unusable where there is none, or more than any file of ours holds
 */
export function readBytes(path: string): Uint8Array {
  const name = plain(fileName(path));
  try {
    if (path !== STANDARD) {
      const found = statSync(path);
      if (found.isDirectory()) throw new Unusable(`${name}: this is a folder. → Name the file in it.`);
      if (found.size > MAX_BYTES) throw new Unusable(`${name}: this file is too large.`);
    }
    return readFileSync(path === STANDARD ? 0 : path);
  } catch (error) {
    throw error instanceof Unusable ? error : new Unusable(`${name}: ${reason(error)}`);
  }
}

/**
 * The text of a file, or of the standard input where the path is "-".
 * @throws Unusable where there is none, or it is not UTF-8
 */
export function readText(path: string): string {
  const name = plain(fileName(path));
  const bytes = readBytes(path);
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new Unusable(`${name}: this is not UTF-8 text. → Open the file that Pigtail saved.`);
  }
}

/** Refuses to write over a file that is there. */
export function mustBeNew(path: string): void {
  if (path !== STANDARD && statSync(path, { throwIfNoEntry: false }))
    throw new Unusable(`${plain(path)} is there already. → Choose another name, or add --force.`);
}

/**
 * Writes a file whole or not at all: first beside it under another name, then renamed into its place. "-" is the
 * standard output.
 * @throws Unusable where it cannot be written; what was there before is then untouched
 */
export function writeWhole(path: string, content: string | Uint8Array): void {
  if (path === STANDARD) {
    writeAll(1, content);
    return;
  }
  const old = statSync(path, { throwIfNoEntry: false });
  if (old && !old.isFile()) throw new Unusable(`${plain(path)} is not a file that can be written over.`);
  // A link stays a link: what it points to is replaced.
  const target = old ? realpathSync(path) : path;
  const beside = join(dirname(target), `.${basename(target)}.${randomBytes(6).toString("hex")}.part`);
  let handle: number | null = null;
  try {
    handle = openSync(beside, "wx", old ? old.mode & 0o777 : 0o666);
    writeAll(handle, content);
    fsyncSync(handle);
    closeSync(handle);
    handle = null;
    renameSync(beside, target);
  } catch (error) {
    if (handle !== null) closeSync(handle);
    rmSync(beside, { force: true });
    throw new Unusable(`${plain(path)} could not be written: ${reason(error)}`);
  }
}

function writeAll(handle: number, content: string | Uint8Array): void {
  const bytes = typeof content === "string" ? Buffer.from(content, "utf8") : content;
  for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder.",
  EACCES: "this is not allowed.",
  EPERM: "this is not allowed.",
  EROFS: "this disk can only be read.",
  ENOSPC: "the disk is full.",
  ENOTDIR: "a part of the path is not a folder.",
};

function reason(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return (code && REASONS[code]) ?? message;
}
