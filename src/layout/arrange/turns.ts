import { type PlannedWire, plannedWires } from "./plan.ts";
import type { ArrangeProblem } from "./types.ts";

/** Enough for the middle of a chain of joints to learn which end is the vehicle's. */
const ROUNDS = 24;

/**
 * Which of the blocks that may be mirrored would then face what they are wired to: a cap on an equipment's lead,
 * a splice whose first contact was joined to the equipment.
 * @returns ids of the blocks to mirror
 */
export function turnsFor(problem: ArrangeProblem): ReadonlySet<string> {
  const { blocks } = problem;
  const turned = new Set<string>();
  if (!blocks.some((block) => block.mayTurn && !block.pinned)) return turned;
  const wires = plannedWires(blocks, problem.wires);
  const wiresOf: PlannedWire[][] = blocks.map(() => []);
  for (const wire of wires) {
    wiresOf[wire.from.block]!.push(wire);
    wiresOf[wire.to.block]!.push(wire);
  }
  const across = positionsAcross(problem, wiresOf);
  const facing = new Map<number, number>();
  const isLeaf = (index: number) => new Set(othersOf(index).map((end) => end.block)).size === 1;
  const othersOf = (index: number) =>
    wiresOf[index]!.map((wire) => (wire.from.block === index ? wire.to : wire.from));

  const decide = (index: number, leaf: boolean): void => {
    const block = blocks[index]!;
    if (!block.mayTurn || block.pinned) return;
    let score = 0;
    for (const wire of wiresOf[index]!) {
      const [own, other] = wire.from.block === index ? [wire.from, wire.to] : [wire.to, wire.from];
      // 1: the other end is to the left of this block, so the port should be too.
      let toLeft: number;
      if (leaf) toLeft = sign(other.port.side) * (facing.get(other.block) ?? 1);
      else toLeft = Math.sign(across[index]! - across[other.block]!);
      score += toLeft * -sign(own.port.side);
    }
    facing.set(index, score < 0 ? -1 : 1);
    if (score < 0) turned.add(block.id);
  };
  const leaves = blocks.map((_, index) => isLeaf(index));
  // A leaf follows its only neighbour, so the neighbours come first.
  for (let index = 0; index < blocks.length; index++) if (!leaves[index]) decide(index, false);
  for (let index = 0; index < blocks.length; index++) if (leaves[index]) decide(index, true);
  return turned;
}

const sign = (side: string): number => (side === "right" ? 1 : side === "left" ? -1 : 0);

/** 0 is the vehicle's side, 1 the equipment's; what is between takes the mean of what it is wired to. */
function positionsAcross(problem: ArrangeProblem, wiresOf: readonly (readonly PlannedWire[])[]): number[] {
  const across: number[] = problem.blocks.map(({ column }) =>
    column === "vehicle" ? 0 : column === "equipment" ? 1 : 0.5,
  );
  for (let round = 0; round < ROUNDS; round++) {
    for (const [index, block] of problem.blocks.entries()) {
      if (block.column !== "between" || wiresOf[index]!.length === 0) continue;
      let sum = 0;
      for (const wire of wiresOf[index]!) {
        sum += across[wire.from.block === index ? wire.to.block : wire.from.block]!;
      }
      across[index] = sum / wiresOf[index]!.length;
    }
  }
  return across;
}
