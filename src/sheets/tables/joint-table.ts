import { writeColour } from "../../catalogue/colours.ts";
import { nameContact } from "../../catalogue/describe.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { contactKey } from "../../graph/contacts.ts";
import type { Colour, Part, PartId, Splice, Wire } from "../../graph/harness.ts";
import type { Circuit } from "../../graph/trace.ts";
import { JOINTS, jointWords } from "../part-drawing/joint.ts";
import { type Cell, cell, column, strong, type Table, type TableSource } from "./table.ts";
import { partsInOrder, Whither } from "./whither.ts";

/**
 * Every joint: the leads on its two sides, how it is made, the function, whether the colours differ, and the
 * colour traps: a lead of the other chart that has the same colour and means something else.
 */
export function jointTable(source: TableSource): Table {
  const whither = new Whither(source);
  const traps = new Traps(source, whither);
  const splices = partsInOrder(source.harness.parts).filter((part) => part.kind === "splice");
  return {
    id: "joints",
    title: "Joint table",
    remark:
      "Join by function, never by colour. ≠: the colours differ, as they should here. Trap: the other chart has a lead of this colour that means something else.",
    empty: "No joints.",
    columns: [
      column("joint", "Joint", 10),
      column("left", "Left lead", 14),
      column("left-colour", "Colour", 12),
      column("kind", "Made as", 26),
      column("right", "Right lead", 14),
      column("right-colour", "Colour", 12),
      column("function", "Function", 24),
      column("differ", "Colours", 10),
      column("trap", "Colour trap", 44),
      column("done", "Done", 6),
      column("checked", "Check", 6),
    ],
    rows: splices.flatMap((splice) => jointRows(splice, source, whither, traps)),
  };
}

/** Where it lies, which says how it has to be covered. */
const ZONE_WORDS: Readonly<Record<Splice["zone"], string>> = {
  cabin: "; in the cabin",
  "engine-bay": "; in the engine bay",
  outside: "; outside",
  door: "; in a door",
  "luggage-space": "; in the luggage space",
  unknown: "",
};

/** One row for each pair of leads; the side with fewer leads stays empty below its last. */
function jointRows(splice: Splice, source: TableSource, whither: Whither, traps: Traps): Cell[][] {
  const { traced } = source;
  const sides = [1, 2].map((contact) => traced.wiresAt(contactKey(splice.id, contact)));
  const [left = [], right = []] = sides;
  const circuit = traced.circuitOf(contactKey(splice.id, 1));
  const count = Math.max(1, left.length, right.length);
  const differ = coloursDiffer(left, right);
  const found = traps.of(splice.id, [...left, ...right], circuit);
  return Array.from({ length: count }, (_, index) => {
    const first = index === 0;
    return [
      strong(first ? splice.designation : ""),
      ...leadCells(left[index], splice.id, whither),
      cell(first ? `${JOINTS[splice.method].letter}  ${jointWords(splice)}${ZONE_WORDS[splice.zone]}` : ""),
      ...leadCells(right[index], splice.id, whither),
      cell(first ? whither.functionOf(circuit) : ""),
      cell(first && differ ? "≠ differ" : ""),
      cell(first && found.length > 0 ? `Trap: ${found.join("; ")}` : ""),
      cell(first ? "☐" : ""),
      cell(first ? "☐" : ""),
    ];
  });
}

function leadCells(wire: Wire | undefined, joint: PartId, whither: Whither): [Cell, Cell] {
  if (!wire) return [cell(""), cell("")];
  const far = wire.ends.find((end) => end === "loose" || end.part !== joint) ?? wire.ends[1];
  return [
    cell(`${wire.designation} ${whither.nameOfEnd(far)}`),
    { text: writeColour(wire.colour), swatch: wire.colour },
  ];
}

/** True where a lead of one side has another stated colour than a lead of the other. */
export function coloursDiffer(left: readonly Wire[], right: readonly Wire[]): boolean {
  return left.some((a) =>
    right.some((b) => a.colour && b.colour && writeColour(a.colour) !== writeColour(b.colour)),
  );
}

/** Finds, for the leads of a joint, cavities of the far charts that have a lead's colour and another function. */
class Traps {
  private readonly byColour = new Map<string, Map<string, number[]>>();

  constructor(
    private readonly source: TableSource,
    private readonly whither: Whither,
  ) {}

  of(joint: PartId, wires: readonly Wire[], circuit: Circuit | undefined): string[] {
    const { harness, traced } = this.source;
    const purpose = this.whither.functionIdOf(circuit);
    if (!circuit || purpose === "unknown") return [];
    const inCircuit = new Set(circuit.contacts);
    const housings = new Set<Part>();
    for (const key of circuit.contacts) {
      const part = traced.partOf(key);
      if (part?.kind === "connector" || part?.kind === "module") housings.add(part);
    }
    const found = new Set<string>();
    for (const wire of wires) {
      if (!wire.colour) continue;
      const own = wire.ends.find((end) => end !== "loose" && end.part !== joint);
      for (const housing of housings) {
        if (own && own !== "loose" && own.part === housing.id) continue;
        for (const contact of this.coloured(housing, wire.colour)) {
          if (inCircuit.has(contactKey(housing.id, contact))) continue;
          const other = functionAt(housing, contact);
          if (other === "unknown" || other === "not-used" || other === purpose) continue;
          const name = nameContact(harness, { part: housing.id, contact });
          found.add(`${name} is ${writeColour(wire.colour)} too, ${functionOf(other).name}`);
        }
      }
    }
    return [...found];
  }

  /** The cavities of a housing whose chart lead has a colour. */
  private coloured(part: Part, colour: Colour): readonly number[] {
    let colours = this.byColour.get(part.id);
    if (!colours) {
      colours = new Map();
      const cavities = part.kind === "connector" || part.kind === "module" ? part.cavities : [];
      for (const [index, { lead }] of cavities.entries()) {
        if (!lead?.colour) continue;
        const key = writeColour(lead.colour);
        const list = colours.get(key) ?? [];
        list.push(index + 1);
        colours.set(key, list);
      }
      this.byColour.set(part.id, colours);
    }
    return colours.get(writeColour(colour)) ?? [];
  }
}

function functionAt(part: Part, contact: number): string {
  if (part.kind !== "connector" && part.kind !== "module") return "unknown";
  return part.cavities[contact - 1]?.function ?? "unknown";
}
