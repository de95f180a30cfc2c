import type { ElkNode } from "elkjs/lib/elk-api.js";
import { arrangeWith } from "../../src/layout/arrange/arrange.ts";
import { loadElk } from "../../src/layout/arrange/elk.ts";
import { type PlannedEnd, plannedWires, planOf } from "../../src/layout/arrange/plan.ts";
import { toElk } from "../../src/layout/arrange/to-elk.ts";
import type { Arranged, ArrangeProblem } from "../../src/layout/arrange/types.ts";
import { measure } from "../../src/layout/route/measure.ts";
import { route } from "../../src/layout/route/route.ts";
import type { RouteEnd, RouteProblem } from "../../src/layout/route/types.ts";
import { harness } from "../layout/arrange/problems.ts";

const RUNS = 3;
const SEEDS = [1, 2, 3];

/** The same graph with nothing of ours: ELK's own columns, order and placement. */
function plainGraph(graph: ElkNode): ElkNode {
  return {
    ...graph,
    layoutOptions: {
      "elk.algorithm": "layered",
      "elk.direction": "RIGHT",
      "elk.edgeRouting": "ORTHOGONAL",
      "elk.randomSeed": "1",
      "elk.spacing.nodeNode": "24",
      "elk.layered.spacing.edgeEdgeBetweenLayers": "8",
    },
    children: (graph.children ?? []).map(({ x: _x, y: _y, layoutOptions: _options, ...node }) => ({
      ...node,
      layoutOptions: { "elk.portConstraints": "FIXED_POS" },
    })),
  };
}

type Routes = { readonly problem: RouteProblem; readonly paths: ReadonlyMap<string, readonly number[]> };

/** What was arranged, with our router's paths: a folded piece is laid out in parts, and ELK has none between them. */
function asRoutes(problem: ArrangeProblem, arranged: Arranged): Routes {
  const { blocks } = planOf(problem);
  const boxes = blocks.map(({ id, width, height }) => ({ id, width, height, ...arranged.places.get(id)! }));
  const endOf = ({ block, port }: PlannedEnd): RouteEnd => {
    const { id, x, y } = boxes[block]!;
    return { block: id, x: x + port.x, y: y + port.y, side: port.side, stub: blocks[block]!.stub.left };
  };
  const wires = plannedWires(blocks, problem.wires).map(({ wire, from, to }) => ({
    id: wire.id,
    from: endOf(from),
    to: endOf(to),
    circuit: `${from.block}:${from.port.contact}`,
  }));
  const routes: RouteProblem = { blocks: boxes, wires, kept: new Map() };
  return { problem: routes, paths: route(routes).paths };
}

/** ELK's answer as it is. */
function asAnswered(answer: ElkNode): Routes {
  const boxes = (answer.children ?? []).map(({ id, x = 0, y = 0, width = 0, height = 0 }) => ({
    id,
    x,
    y,
    width,
    height,
  }));
  const paths = new Map<string, readonly number[]>();
  const wires = (answer.edges ?? []).map(({ id, sources, sections }) => {
    const section = sections?.[0];
    const points = section ? [section.startPoint, ...(section.bendPoints ?? []), section.endPoint] : [];
    paths.set(
      id,
      points.flatMap(({ x, y }) => [x, y]),
    );
    return { ...NOWHERE, id, circuit: sources[0]! };
  });
  return { problem: { blocks: boxes, wires, kept: new Map() }, paths };
}

/** Figures do not look at the ends, only at the paths. */
const END = { block: "", x: 0, y: 0, side: "left", stub: 0 } as const;
const NOWHERE = { from: END, to: END };

const median = (values: number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

/**
 * Arranging, engine warm, beside ELK with its defaults on the same graph: time, and crossings, bends, length of the routes,
 * ours by our router.
 */
export async function bench(): Promise<string[]> {
  const layout = await loadElk();
  for (const seed of SEEDS) await arrangeWith(layout, harness(200, seed));
  const lines: string[] = [];
  for (const wires of [50, 200, 1000]) {
    for (const seed of wires === 1000 ? [1] : SEEDS) {
      const problem = harness(wires, seed);
      const plan = planOf(problem);
      const graphs = plan.components.map((component) => plainGraph(toElk(plan, component)));
      const trials: [string, () => Promise<() => Routes[]>][] = [
        [
          "ours",
          async () => {
            const arranged = await arrangeWith(layout, problem);
            return () => [asRoutes(problem, arranged)];
          },
        ],
        [
          "plain elkjs",
          async () => {
            const answers = await Promise.all(graphs.map(layout));
            return () => answers.map(asAnswered);
          },
        ],
      ];
      for (const [name, trial] of trials) {
        const times: number[] = [];
        let routes: () => Routes[] = () => [];
        for (let run = 0; run < RUNS; run++) {
          const start = performance.now();
          routes = await trial();
          times.push(performance.now() - start);
        }
        const all = routes().map(({ problem, paths }) => measure(problem, paths));
        const sum = (key: "crossings" | "bends" | "length") =>
          Math.round(all.reduce((total, one) => total + one[key], 0));
        const figures = `${sum("crossings")} crossings, ${sum("bends")} bends, length ${sum("length")}`;
        lines.push(
          `${wires} wires, harness ${seed}, ${name.padEnd(11)} ${median(times).toFixed(0)} ms, ${figures}`,
        );
      }
    }
    const problem = harness(wires);
    const start = performance.now();
    const plan = planOf(problem);
    for (const component of plan.components) toElk(plan, component);
    lines.push(
      `${wires} wires: planning and ordering before ELK ${(performance.now() - start).toFixed(1)} ms`,
    );
  }
  return lines;
}
