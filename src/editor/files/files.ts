import { createStore } from "zustand/vanilla";
import type { Harness } from "../../graph/harness.ts";
import { emptyHarness } from "../../graph/make.ts";
import { parse, serialise } from "../../graph/parse/parse.ts";
import type { Problem } from "../../graph/parse/problem.ts";
import { openDialog } from "../shell/dialogs.ts";
import { documentOf, type Editor } from "../state/store.ts";
import { changedOnDisk, type DiskFile, modifiedAt, pickFile, writeFile } from "./disk.ts";
import { fileNameOf, type Kept, nameOf } from "./files-model.ts";
import { forgetLast, freshId, rememberLast, showSampleInAddress } from "./last-open.ts";
import { keep, putRecent, takeDown } from "./shelf.ts";

/** After an edit the harness is kept in the browser within this time. */
const KEEP_AFTER_MS = 300;
const LOCK_WAIT_MS = 1200;

export type FilesState = {
  /** The harness's id in the browser's storage. */
  readonly id: string;
  readonly fileName: string | null;
  readonly handle: FileSystemFileHandle | null;
  readonly lastModified: number;
  /** The harness as it stands in the file; another object means there is something to save. */
  readonly inFile: Harness | null;
  /** `unedited`: there is nothing of the person's to keep yet. */
  readonly keeping: "unedited" | "kept" | "waiting" | "failed";
  readonly whyFailed: string;
  /** Another tab has written this harness since it was read here. */
  readonly conflict: { readonly theirs: Kept } | null;
  /** The harness is open in another tab as well. */
  readonly alsoOpen: boolean;
  /** A file that could not be read, and why; the open harness is untouched. */
  readonly unreadable: { readonly fileName: string; readonly problems: readonly Problem[] } | null;
  /** The file was changed by something else since it was opened. */
  readonly newerOnDisk: boolean;
  readonly dialog: "none" | "recent" | "samples";
};

export type Files = ReturnType<typeof createFiles>;

/** Keeps the editor's harness in the browser and on disk. One for a page. */
export function createFiles(editor: Editor) {
  const tab = freshId();
  const present = () => documentOf(editor.getState());
  let revision = 0;
  // The empty sheet that a page starts with needs no keeping.
  let kept: Harness | null = present();
  let timer: ReturnType<typeof setTimeout> | null = null;
  let releaseLock: (() => void) | null = null;
  const store = createStore<FilesState>()(() => ({
    id: freshId(),
    fileName: null,
    handle: null,
    lastModified: 0,
    inFile: null,
    keeping: "unedited",
    whyFailed: "",
    conflict: null,
    alsoOpen: false,
    unreadable: null,
    newerOnDisk: false,
    dialog: "none",
  }));
  const channel = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel("pigtail");
  if (channel) {
    channel.onmessage = ({ data }: MessageEvent<{ id: string; revision: number; tab: string }>) => {
      if (data.tab === tab || data.id !== store.getState().id || data.revision <= revision) return;
      void takeDown(data.id).then((theirs) => {
        if (theirs) store.setState({ conflict: { theirs } });
      });
    };
  }

  let writing: Promise<void> = Promise.resolve();
  /** Writes now what has changed. Writes follow one another, so a revision is never used twice. */
  function keepNow(force = false): Promise<void> {
    if (timer) clearTimeout(timer);
    timer = null;
    writing = writing.then(() => write(force));
    return writing;
  }

  async function write(force: boolean): Promise<void> {
    const { id, conflict, fileName } = store.getState();
    const harness = present();
    if ((harness === kept || conflict) && !force) return;
    const name = nameOf(harness, fileName);
    try {
      const result = await keep(
        { id, name, text: serialise(harness), keptAt: Date.now(), tab },
        revision,
        force,
      );
      if (!result.ok) {
        store.setState({ conflict: { theirs: result.theirs } });
        return;
      }
      if (store.getState().id === id) {
        revision = result.revision;
        kept = harness;
      }
      await putRecent({
        id,
        name,
        keptAt: Date.now(),
        partCount: Object.keys(harness.parts).length,
        wireCount: Object.keys(harness.wires).length,
      });
      if (store.getState().id === id) rememberLast(id);
      channel?.postMessage({ id, revision: result.revision, tab });
      if (store.getState().id !== id) return;
      store.setState({ keeping: present() === harness ? "kept" : "waiting", whyFailed: "", conflict: null });
    } catch (error) {
      store.setState({ keeping: "failed", whyFailed: (error as Error).message });
    }
  }

  /** Holds a lock for the harness while this tab has it, to see when another one does. */
  function claim(id: string): void {
    releaseLock?.();
    releaseLock = null;
    if (!("locks" in navigator)) return;
    const hold = () =>
      new Promise<void>((resolve) => {
        if (store.getState().id !== id) return resolve();
        releaseLock = resolve;
        store.setState({ alsoOpen: false });
      });
    // A page that is being reloaded gives its lock up a moment late; a lock still held after that is another tab's.
    navigator.locks
      .request(`pigtail:${id}`, { signal: AbortSignal.timeout(LOCK_WAIT_MS) }, hold)
      .catch(() => {
        if (store.getState().id !== id) return;
        store.setState({ alsoOpen: true });
        void navigator.locks.request(`pigtail:${id}`, hold);
      });
  }

  function begin(
    harness: Harness,
    known: Partial<FilesState>,
    seenRevision: number,
    alreadyKept: boolean,
  ): void {
    const id = known.id ?? freshId();
    revision = seenRevision;
    store.setState({
      fileName: null,
      handle: null,
      lastModified: 0,
      inFile: null,
      keeping: !alreadyKept ? "waiting" : seenRevision > 0 ? "kept" : "unedited",
      whyFailed: "",
      conflict: null,
      alsoOpen: false,
      unreadable: null,
      newerOnDisk: false,
      dialog: "none",
      ...known,
      id,
    });
    kept = alreadyKept ? harness : null;
    editor.getState().open(harness);
    const opened = present();
    if (alreadyKept) kept = opened;
    if (known.inFile === harness) store.setState({ inFile: opened });
    claim(id);
  }

  editor.subscribe((state, before) => {
    const now = documentOf(state);
    if (now === documentOf(before) || now === kept) return;
    if (state.documentKey !== before.documentKey) return;
    const { past, future } = state.history;
    if (revision === 0 && past.length === 0 && future.length === 0) {
      // A sample that is arranged as it opens has not been edited.
      kept = now;
      return;
    }
    store.setState({ keeping: "waiting" });
    if (timer) clearTimeout(timer);
    timer = setTimeout(() => void keepNow(), KEEP_AFTER_MS);
  });

  return {
    store,
    keepNow,

    /** Starts an empty harness. It is kept with its first edit. */
    async startNew(): Promise<void> {
      await keepNow();
      const harness = emptyHarness();
      begin(harness, {}, 0, true);
      forgetLast();
    },

    /** Opens a copy of a sample. It is kept with its first edit; until then the address brings it back. */
    async openSample(sample: string, harness: Harness): Promise<void> {
      await keepNow();
      begin(harness, {}, 0, true);
      showSampleInAddress(sample);
    },

    /** Opens a harness the browser has kept. Returns whether it was there and could be read. */
    async openKept(id: string): Promise<boolean> {
      await keepNow();
      const record = await takeDown(id);
      if (!record) return false;
      const read = parse(record.text);
      if (!read.ok) {
        store.setState({ unreadable: { fileName: record.name, problems: read.problems } });
        return false;
      }
      begin(read.harness, { id }, record.revision, true);
      rememberLast(id);
      return true;
    },

    /** Opens the text of a file; problems are shown and the open harness stays. A kept connector is taken in. */
    async openFile(file: DiskFile): Promise<boolean> {
      if (/\.connector\.json$/i.test(file.name)) {
        const { name, text } = file;
        openDialog({ kind: "add-connector", side: null, at: null, next: null, file: { name, text } });
        return true;
      }
      const read = parse(file.text);
      if (!read.ok) {
        store.setState({ unreadable: { fileName: file.name, problems: read.problems } });
        return false;
      }
      await keepNow();
      const { name: fileName, handle, lastModified } = file;
      begin(read.harness, { fileName, handle, lastModified, inFile: read.harness }, 0, false);
      await keepNow();
      for (const note of read.notes) editor.getState().say(note);
      return true;
    },

    async pick(): Promise<void> {
      try {
        const file = await pickFile();
        if (file) await this.openFile(file);
      } catch (error) {
        editor.getState().say(`The file could not be read: ${(error as Error).message}`, "refused");
      }
    },

    /** Saves to the file it came from, or asks where to. */
    async save(options: { readonly as?: boolean; readonly over?: boolean } = {}): Promise<void> {
      const state = store.getState();
      const handle = options.as ? null : state.handle;
      const harness = present();
      if (!options.over && (await changedOnDisk(handle, state.lastModified))) {
        store.setState({ newerOnDisk: true });
        return;
      }
      const fileName = (!options.as && state.fileName) || fileNameOf(nameOf(harness, state.fileName));
      try {
        const written = await writeFile(serialise(harness), fileName, handle);
        if (written === "cancelled") return;
        store.setState({
          handle: written,
          fileName: written?.name ?? fileName,
          lastModified: await modifiedAt(written),
          inFile: harness,
          newerOnDisk: false,
        });
        editor.getState().say(`Saved ${written?.name ?? fileName}.`);
        await keepNow();
      } catch (error) {
        editor.getState().say(`${fileName} could not be written: ${(error as Error).message}`, "refused");
      }
    },

    /** Ways out of a conflict with another tab; none loses either tab's work without being asked. */
    async settleConflict(how: "copy" | "take-over" | "newest"): Promise<void> {
      const { conflict, id } = store.getState();
      if (how === "copy") {
        const copyId = freshId();
        revision = 0;
        kept = null;
        store.setState({ id: copyId, conflict: null, alsoOpen: false, handle: null, inFile: null });
        claim(copyId);
        await keepNow();
      } else if (how === "take-over") {
        store.setState({ conflict: null, alsoOpen: false });
        await keepNow(true);
      } else {
        // What this tab had is given up knowingly: it counts as kept, so that it is not written over theirs.
        kept = present();
        store.setState({ conflict: null });
        if (conflict) await this.openKept(id);
      }
    },

    dismiss(): void {
      store.setState({ unreadable: null, newerOnDisk: false, dialog: "none", alsoOpen: false });
    },

    show(dialog: FilesState["dialog"]): void {
      store.setState({ dialog });
    },

    /** Something would be lost if the page went now. */
    hasUnkept(): boolean {
      return store.getState().keeping === "failed";
    },
  };
}
