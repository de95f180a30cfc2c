import type { ELK, ElkNode } from "elkjs/lib/elk-api.js";

/**
 * Loads ELK (1.6 MB of script) and returns its layout function. In a worker and in Node it runs in the calling
 * thread, so on a page use `createArranger` instead.
 */
export async function loadElk(): Promise<(graph: ElkNode) => Promise<ElkNode>> {
  const { default: Elk } = await import("elkjs/lib/elk.bundled.js");
  const elk: ELK = new Elk();
  return (graph) => elk.layout(graph);
}
