import type { ElkNode } from "elkjs/lib/elk-api.js";
import { arrangeWith } from "./arrange.ts";
import { loadElk } from "./elk.ts";
import type { Arranged, ArrangeProblem, ArrangeStep } from "./types.ts";

let elk: Promise<(graph: ElkNode) => Promise<ElkNode>> | null = null;

/**
 * Arranges a harness in the calling thread, for the command line and tests: the same result as in the browser.
 * @param step told after each connected piece
 */
export async function arrangeInNode(problem: ArrangeProblem, step?: ArrangeStep): Promise<Arranged> {
  elk ??= loadElk();
  return arrangeWith(await elk, problem, step);
}
