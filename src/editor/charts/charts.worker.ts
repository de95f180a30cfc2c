import { propose } from "../../match/propose/propose.ts";
import { readCharts } from "../../match/read-chart.ts";
import type { Answer, Ask, ReadAnswer } from "./messages.ts";
import { readFileBytes } from "./read-file.ts";

self.addEventListener(
  "message",
  ({ data }: MessageEvent<Ask & { readonly job: number }>) => void answer(data),
);

async function answer(ask: Ask & { readonly job: number }): Promise<void> {
  const { job } = ask;
  const send = (message: Answer): void => self.postMessage(message);
  try {
    send({ job, ok: true, value: await take(ask) });
  } catch (error) {
    send({ job, ok: false, why: error instanceof Error ? error.message : String(error) });
  }
}

async function take(ask: Ask): Promise<Extract<Answer, { ok: true }>["value"]> {
  switch (ask.kind) {
    case "text":
      return { text: null, read: readCharts(ask.text, { sizes: ask.sizes }) } satisfies ReadAnswer;
    case "file":
      return readFileBytes(ask.bytes, ask.sizes);
    case "propose":
      return propose(ask.left, ask.right);
  }
}
