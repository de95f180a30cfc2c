import ELK, { type ElkExtendedEdge } from "elkjs/lib/elk.bundled.js";
import type { Path, RouteProblem } from "../../../src/layout/route/types.ts";
import { placed, type RandomHarness } from "./random-problem.ts";

const SIDE = { left: "WEST", right: "EAST", top: "NORTH", bottom: "SOUTH" } as const;

/** Plain elkjs (layered, orthogonal, ports where the contacts are): where it puts the parts, and its own routes. */
export async function elkPlacement(
  harness: RandomHarness,
): Promise<{ problem: RouteProblem; places: [number, number][]; elkPaths: Map<string, Path> }> {
  const elk = new ELK();
  const result = await elk.layout({
    id: "root",
    layoutOptions: {
      "elk.algorithm": "layered",
      "elk.direction": "RIGHT",
      "elk.edgeRouting": "ORTHOGONAL",
      // Room for the labels before the contacts, which plain elkjs knows nothing about.
      "elk.layered.spacing.edgeNodeBetweenLayers": "90",
      "elk.spacing.nodeNode": "24",
    },
    children: harness.parts.map((part) => ({
      id: part.id,
      width: part.width,
      height: part.height,
      layoutOptions: { "elk.portConstraints": "FIXED_POS" },
      ports: part.contacts.map((contact, c) => ({
        id: `${part.id}:${c}`,
        x: contact.x,
        y: contact.y,
        width: 0,
        height: 0,
        layoutOptions: { "elk.port.side": SIDE[contact.side] },
      })),
    })),
    edges: harness.wires.map((wire) => ({
      id: wire.id,
      sources: [`${harness.parts[wire.from[0]]!.id}:${wire.from[1]}`],
      targets: [`${harness.parts[wire.to[0]]!.id}:${wire.to[1]}`],
    })),
  });
  const at = new Map(result.children!.map((child) => [child.id, [child.x!, child.y!] as [number, number]]));
  const places = harness.parts.map((part) => at.get(part.id)!);
  const elkPaths = new Map<string, Path>();
  for (const edge of result.edges as ElkExtendedEdge[]) {
    const { startPoint, bendPoints = [], endPoint } = edge.sections![0]!;
    elkPaths.set(
      edge.id,
      [startPoint, ...bendPoints, endPoint].flatMap((point) => [point.x, point.y]),
    );
  }
  return { problem: placed(harness, places), places, elkPaths };
}
