import type { Harness } from "../../graph/harness.ts";

/** A harness as the browser keeps it. `revision` counts every keeping, by whichever tab. */
export type Kept = {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  readonly revision: number;
  readonly keptAt: number;
  /** The tab that wrote it last. */
  readonly tab: string;
};

/** What the list of recent harnesses shows, kept apart so that listing does not read every harness. */
export type Recent = {
  readonly id: string;
  readonly name: string;
  readonly keptAt: number;
  readonly partCount: number;
  readonly wireCount: number;
};

/**
 * Whether a tab that last saw `seenRevision` may write. It may not where another tab has written since: that
 * tab's work would be lost without a word.
 */
export function mayWrite(existing: Kept | undefined, seenRevision: number): boolean {
  return existing === undefined || existing.revision === seenRevision;
}

/** What a harness is called: its title, or the file's own name, or a plain word. */
export function nameOf(harness: Harness, fileName: string | null): string {
  const title = harness.titleBlock.title.trim();
  if (title) return title;
  if (fileName) return fileName.replace(/\.harness\.json$|\.json$/i, "");
  return "Untitled harness";
}

/** A file name made from a title: no characters that some file system refuses, ends in `.harness.json`. */
export function fileNameOf(name: string): string {
  const plain = name
    .normalize("NFC")
    .replace(/[\p{Cc}<>:"/\\|?*]+/gu, " ")
    .trim()
    .replace(/[\s.]+$/u, "")
    .replace(/\s+/gu, "-")
    .slice(0, 80);
  return `${plain || "harness"}.harness.json`;
}

/** "14:03" today, "23 Nov 14:03" before. */
export function sayWhen(time: number, now: number): string {
  const at = new Date(time);
  const clock = at.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  if (new Date(now).toDateString() === at.toDateString()) return clock;
  return `${at.toLocaleDateString("en-GB", { day: "numeric", month: "short" })} ${clock}`;
}

/** Newest first, one entry a harness, at most `most`. */
export function sortRecent(list: readonly Recent[], most = 50): readonly Recent[] {
  return [...list].sort((a, b) => b.keptAt - a.keptAt).slice(0, most);
}
