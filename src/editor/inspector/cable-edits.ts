import { type Edit, group, type Refused, refused } from "../../graph/edits/edit.ts";
import type { Cable, CableId, Harness, WireId } from "../../graph/harness.ts";
import { Names } from "../../graph/make.ts";

export const CABLE_WORDS: Readonly<Record<Cable["kind"], string>> = {
  "twisted-pair": "twisted pair",
  shielded: "shielded cable",
  "shielded-pair": "shielded pair",
  coax: "coaxial cable",
  multicore: "multicore cable",
};

/** How many wires each kind takes, at least and at most. */
const WIRES: Readonly<Record<Cable["kind"], readonly [number, number]>> = {
  "twisted-pair": [2, 2],
  shielded: [1, 200],
  "shielded-pair": [2, 2],
  coax: [1, 1],
  multicore: [2, 200],
};

export function cableOfWire(harness: Harness, wire: WireId): Cable | null {
  return (
    Object.values(harness.cables).find((cable) => cable.wires.includes(wire) || cable.shield === wire) ?? null
  );
}

/** True where a cable of this kind can be made of that many wires. */
export function canMake(kind: Cable["kind"], count: number): boolean {
  const [least, most] = WIRES[kind];
  return count >= least && count <= most;
}

/** Puts wires into a new cable; they leave the cable they were in, and a cable left empty goes. */
export function makeCable(harness: Harness, wires: readonly WireId[], kind: Cable["kind"]): Edit | Refused {
  const [least, most] = WIRES[kind];
  if (!canMake(kind, wires.length)) {
    const count = least === most ? `exactly ${least}` : `at least ${least}`;
    return refused(`A ${CABLE_WORDS[kind]} takes ${count} ${most === 1 ? "wire" : "wires"}.`);
  }
  const taken = new Set(Object.values(harness.cables).map((cable) => cable.designation));
  let number = 1;
  while (taken.has(`WC${number}`)) number++;
  const cable: Cable = {
    id: new Names(harness).id("cables") as CableId,
    designation: `WC${number}`,
    kind,
    wires: [...wires],
    shield: null,
    note: "",
  };
  return group(`make ${CABLE_WORDS[kind]}`, [
    ...leaveCables(harness, new Set(wires)),
    { kind: "put-entry", section: "cables", entry: cable },
  ]);
}

function leaveCables(harness: Harness, wires: ReadonlySet<WireId>): readonly Edit[] {
  return Object.values(harness.cables).flatMap((cable): Edit[] => {
    const left = cable.wires.filter((id) => !wires.has(id));
    const shield = cable.shield && wires.has(cable.shield) ? null : cable.shield;
    if (left.length === cable.wires.length && shield === cable.shield) return [];
    if (left.length === 0) return [{ kind: "drop-entry", section: "cables", id: cable.id }];
    return [{ kind: "put-entry", section: "cables", entry: { ...cable, wires: left, shield } }];
  });
}

/** Takes a cable apart: its wires stay. */
export function partCable(cable: Cable): Edit {
  return group(`take ${cable.designation} apart`, [{ kind: "drop-entry", section: "cables", id: cable.id }]);
}
