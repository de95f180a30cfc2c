/// <reference types="vite/client" />
import { SAMPLE_LIST, type SampleEntry } from "./list.ts";

/** A sample of the editor's menu; its text is fetched only when it is asked for. */
export type Sample = SampleEntry & { readonly load: () => Promise<string> };

const texts = import.meta.glob<string>("./*.harness.json", { query: "?raw", import: "default" });

export const SAMPLES: readonly Sample[] = SAMPLE_LIST.map((entry) => ({
  ...entry,
  load: async () => {
    const read = texts[`./${entry.id}.harness.json`];
    if (!read) throw new Error(`the sample ${entry.id} is not part of this build`);
    return read();
  },
}));

/** The sample of that name, as `?sample=NAME` asks for it. */
export function findSample(id: string): Sample | undefined {
  return SAMPLES.find((sample) => sample.id === id);
}
