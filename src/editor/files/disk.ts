import { fileOpen, fileSave } from "browser-fs-access";

/** A file as it was read, with its handle where the browser lets it be written again. */
export type DiskFile = {
  readonly name: string;
  readonly text: string;
  readonly handle: FileSystemFileHandle | null;
  readonly lastModified: number;
};

/**
 * Asks for a file. `null`: the person chose none.
 * @param description what is asked for, where the browser shows it
 */
export async function pickFile(description = "Pigtail harness"): Promise<DiskFile | null> {
  try {
    const file = await fileOpen({
      description,
      extensions: [".json"],
      mimeTypes: ["application/json"],
      id: "pigtail",
    });
    return await readFile(file, file.handle ?? null);
  } catch (error) {
    if (isCancel(error)) return null;
    throw error;
  }
}

export async function readFile(file: File, handle: FileSystemFileHandle | null = null): Promise<DiskFile> {
  return { name: file.name, text: await file.text(), handle, lastModified: file.lastModified };
}

/**
 * Writes a file: over the one it came from where there is a handle, else by asking or as a download.
 * @returns the handle to write it again, or `null` where the browser gives none; "cancelled" if the person did
 */
export async function writeFile(
  text: string,
  fileName: string,
  handle: FileSystemFileHandle | null,
): Promise<FileSystemFileHandle | null | "cancelled"> {
  try {
    const blob = new Blob([text], { type: "application/json" });
    return await fileSave(blob, { fileName, extensions: [".json"], id: "pigtail" }, handle);
  } catch (error) {
    if (isCancel(error)) return "cancelled";
    throw error;
  }
}

/** True where the file on disk is newer than when it was read or written here. */
export async function changedOnDisk(
  handle: FileSystemFileHandle | null,
  lastModified: number,
): Promise<boolean> {
  if (!handle) return false;
  try {
    return (await handle.getFile()).lastModified > lastModified;
  } catch {
    // The file was moved or deleted: saving makes it anew.
    return false;
  }
}

export async function modifiedAt(handle: FileSystemFileHandle | null): Promise<number> {
  if (!handle) return 0;
  return (await handle.getFile()).lastModified;
}

function isCancel(error: unknown): boolean {
  return error instanceof DOMException && error.name === "AbortError";
}
