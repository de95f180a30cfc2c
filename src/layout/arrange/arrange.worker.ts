import { arrangeWith } from "./arrange.ts";
import { loadElk } from "./elk.ts";
import type { Answer, Ask } from "./messages.ts";
import { warmUpProblem } from "./warm-up.ts";

const answer = (message: Answer): void => self.postMessage(message);

// A listener, not `onmessage`: ELK's script sets that when it loads, for a protocol of its own.
self.addEventListener("message", receive);
const ready = loadElk();

async function receive({ data }: MessageEvent<Ask>): Promise<void> {
  if (data.kind === "warm") {
    await arrangeWith(await ready, warmUpProblem());
    return;
  }
  const { job, problem } = data;
  try {
    const arranged = await arrangeWith(await ready, problem, (done, of) =>
      answer({ kind: "step", job, done, of }),
    );
    answer({ kind: "arranged", job, arranged });
  } catch (error) {
    answer({ kind: "failed", job, why: error instanceof Error ? error.message : String(error) });
  }
}
