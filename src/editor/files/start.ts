import { findSample } from "../../../samples/index.ts";
import { parse } from "../../graph/parse/parse.ts";
import { registerFileCommands } from "../commands/file-commands.ts";
import type { Editor } from "../state/store.ts";
import { readFile } from "./disk.ts";
import { createFiles, type Files } from "./files.ts";
import { lastOpen } from "./last-open.ts";

/**
 * Opens what the address asks for (`?sample=NAME`, `?new`), else the harness that was open last, else an empty
 * one; then keeps every edit. Called once, before the first drawing.
 */
export function startFiles(editor: Editor): Files {
  const files = createFiles(editor);
  registerFileCommands(files);
  takeDroppedFiles(files);
  keepOnLeaving(files);
  void openFirst(editor, files);
  return files;
}

async function openFirst(editor: Editor, files: Files): Promise<void> {
  const asked = new URLSearchParams(location.search);
  const sample = asked.get("sample");
  if (sample !== null) {
    if (await openSample(files, sample)) return;
    editor.getState().say(`There is no sample called ${sample}.`, "refused");
  }
  if (asked.has("new")) return files.startNew();
  try {
    const last = lastOpen();
    if (last && (await files.openKept(last))) return;
  } catch (error) {
    editor
      .getState()
      .say(`The browser's storage cannot be read: ${(error as Error).message}. Save to a file.`, "refused");
  }
}

/** Opens a copy of a sample. Returns whether there is one of that name. */
export async function openSample(files: Files, id: string): Promise<boolean> {
  const sample = findSample(id);
  if (!sample) return false;
  const read = parse(await sample.load());
  if (!read.ok) return false;
  await files.openSample(id, read.harness);
  return true;
}

/** A file dropped anywhere on the page is opened; anything else is left to the browser. */
function takeDroppedFiles(files: Files): void {
  const carriesFile = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
  window.addEventListener("dragover", (event) => {
    if (carriesFile(event)) event.preventDefault();
  });
  window.addEventListener("drop", (event) => {
    const item = event.dataTransfer?.items[0];
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void openDropped(files, file, item);
  });
}

type HandleItem = DataTransferItem & { getAsFileSystemHandle?: () => Promise<FileSystemHandle | null> };

async function openDropped(files: Files, file: File, item: DataTransferItem | undefined): Promise<void> {
  const handle = await (item as HandleItem | undefined)?.getAsFileSystemHandle?.().catch(() => null);
  await files.openFile(
    await readFile(file, handle?.kind === "file" ? (handle as FileSystemFileHandle) : null),
  );
}

/** The last edits are written when the page is hidden or left; only if that cannot be does leaving ask first. */
function keepOnLeaving(files: Files): void {
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void files.keepNow();
  });
  window.addEventListener("pagehide", () => void files.keepNow());
  window.addEventListener("beforeunload", (event) => {
    if (files.hasUnkept()) event.preventDefault();
  });
}
