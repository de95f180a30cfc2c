import type { Connector } from "../../graph/harness.ts";
import type { Chart } from "../chart.ts";

const WIRE_SIDE =
  /\b(wire|lead|cable|harness|rear|back|entry)[- ]?(side|entry|end|view)\b|\b(leitungs|kabel)seite\b|\bc[oô]t[eé] (fils?|c[aâ]bles?)\b|\blado (de )?cables?\b|\blato (cavi|fili)\b|\bkabelzijde\b/i;
const MATING_FACE =
  /\b(mating|terminal|contact|front|pin)[- ]?(side|face|end|view)\b|\bsteck(seite|gesicht)\b|\bc[oô]t[eé] (contacts?|enfichage)\b|\blado (de )?(contactos|acoplamiento)\b|\blato (contatti|innesto)\b|\bcontactzijde\b/i;

/**
 * The side from which a chart says it sees the cavities, in its title or its remarks.
 * @returns `null` where it does not say, or says both
 */
export function statedView({ title, notes }: Chart): Connector["view"] | null {
  const words = [title, ...notes.map((note) => note.text)];
  const wire = words.some((text) => WIRE_SIDE.test(text));
  const face = words.some((text) => MATING_FACE.test(text));
  if (wire === face) return null;
  return wire ? "wire-side" : "mating-face";
}

/** Flying leads: a chart that names no cavity has no face that could be mirrored. */
export function isLeadsOnly({ leads }: Chart): boolean {
  return leads.length > 0 && leads.every((lead) => lead.label === null);
}
