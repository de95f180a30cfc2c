import { type FunctionGroup, functionOf } from "../catalogue/functions.ts";
import type { Contact } from "../graph/contacts.ts";
import type { Direction, JobSide, Part } from "../graph/harness.ts";

/**
 * The direction of a contact, as stated; where a chart does not state one, what its function makes plain for
 * its side. "unknown" stays where both are usual (an amplifier may take or give speaker level).
 */
export function directionOf(part: Part, contact: Contact): Direction {
  if (contact.direction !== "unknown" || !contact.cavity) return contact.direction;
  const { group, id } = functionOf(contact.function);
  if (part.kind === "module") {
    return part.role === "receiver" || part.role === "camera" || part.role === "display"
      ? usual(part.side, group, id)
      : usualOfAny(part.side, group);
  }
  if (part.kind !== "connector") return "unknown";
  return part.belongsTo.module
    ? usualOfAny(part.belongsTo.side, group)
    : usual(part.belongsTo.side, group, id);
}

/** What holds for every box of a side, whatever its role. */
function usualOfAny(side: JobSide, group: FunctionGroup): Direction {
  if (group === "data") return "both";
  if (group === "none") return "none";
  if (group !== "feed" && group !== "ground") return "unknown";
  return side === "vehicle" ? "gives" : "takes";
}

const SIGNALS_OF_THE_VEHICLE = new Set(["parking-brake", "speed"]);
const OUTPUTS_OF_A_UNIT = new Set(["antenna-power", "amplifier-turn-on"]);

function usual(side: JobSide, group: FunctionGroup, id: string): Direction {
  const plain = usualOfAny(side, group);
  if (plain !== "unknown") return plain;
  if (group === "lighting" || SIGNALS_OF_THE_VEHICLE.has(id)) return side === "vehicle" ? "gives" : "takes";
  if (group === "speaker" || OUTPUTS_OF_A_UNIT.has(id)) return side === "vehicle" ? "takes" : "gives";
  return "unknown";
}
