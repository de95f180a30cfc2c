import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import type { Source } from "./import-directions.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Reads every file of some folders of the repository whose name ends in one of the given ways. */
export function readSources(folders: readonly string[], endings: readonly string[]): Source[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
      .map((entry) => join(entry.parentPath, entry.name))
      .map((file) => ({
        path: relative(root, file).split(sep).join("/"),
        text: readFileSync(file, "utf8"),
      })),
  );
}
