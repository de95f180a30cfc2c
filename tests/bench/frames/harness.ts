import type { Harness, PartId, Place, WireId } from "../../../src/graph/harness.ts";
import {
  emptyHarness,
  faceRows,
  makeCavity,
  makeColour,
  makePart,
  makePlace,
  makeWire,
  Names,
} from "../../../src/graph/make.ts";
import { COLOUR_CODES } from "../../../src/graph/schema/values.ts";

const ROWS = 20;
const FUNCTIONS = ["constant-feed", "switched-feed", "ground", "illumination", "reverse", "mute"];

/**
 * A harness of so many wires as a real build has them: connectors of twenty cavities on both sides, every other
 * lead through a splice. The same count always gives the same harness.
 */
export function buildOf(wireCount: number): Harness {
  const base = emptyHarness();
  const names = new Names(base);
  const parts: Record<PartId, Harness["parts"][PartId]> = {};
  const wires: Record<WireId, Harness["wires"][WireId]> = {};
  const places: Record<PartId, Place> = {};
  const housing = (side: "vehicle" | "equipment", at: Place): PartId => {
    const cavities = Array.from({ length: ROWS }, (_, index) =>
      makeCavity(String(index + 1), {
        function: FUNCTIONS[index % FUNCTIONS.length]!,
        lead: { colour: makeColour(COLOUR_CODES[index % 9]!, index % 3 ? null : "WH"), area_mm2: 0.75 },
      }),
    );
    const part = makePart("connector", names.part(), names.designation("connector"), {
      name: "Exhibition trailer, panel lead",
      belongsTo: { side, module: null },
      cavities,
      rows: faceRows(ROWS, 2),
    });
    parts[part.id] = part;
    places[part.id] = at;
    return part.id;
  };
  let made = 0;
  const wire = (a: PartId, contact: number, b: PartId, other: number) => {
    const id = names.wire();
    const colour = makeColour(COLOUR_CODES[made % 9]!, made % 3 ? null : "WH");
    wires[id] = makeWire(
      id,
      names.wireDesignation(),
      [
        { part: a, contact },
        { part: b, contact: other },
      ],
      {
        colour,
        area_mm2: 0.75,
      },
    );
    made++;
  };
  for (let group = 0; made < wireCount; group++) {
    const x = (group % 4) * 1600;
    const y = Math.floor(group / 4) * 640;
    const left = housing("vehicle", makePlace(x, y));
    const right = housing("equipment", makePlace(x + 1040, y));
    for (let row = 0; row < ROWS && made < wireCount; row++) {
      const to = ((row * 7) % ROWS) + 1;
      if (row % 2) {
        wire(left, row + 1, right, to);
        continue;
      }
      const splice = makePart("splice", names.part(), names.designation("splice"), {
        method: "crimped-butt",
      });
      parts[splice.id] = splice;
      places[splice.id] = makePlace(x + 560 + (row % 4) * 72, y + 44 + row * 24);
      wire(left, row + 1, splice.id, 1);
      if (made < wireCount) wire(splice.id, 2, right, to);
    }
  }
  return { ...base, parts, wires, layout: { places, paths: {} } };
}

export const countAsked = (): number => Number(new URLSearchParams(location.search).get("wires") ?? 100);

/** Whether the page is to start at zoom 1 on one corner, or with the whole drawing in view. */
export const atLifeSize = (): boolean => new URLSearchParams(location.search).has("near");
