import { contactKey } from "../../../graph/contacts.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { compareNames, sayList } from "../../words.ts";

/** Above this it is no longer a matter of order. @source four rings a stud, from memory */
const WEAK_ABOVE = 4;

export default defineRule({
  meta: {
    id: "too-many-rings-on-stud",
    group: "grounds",
    severity: "weak",
    summary: "A stud holds no more rings than can lie flat and stay tight.",
    source:
      "the figure of four rings a stud of aircraft and boat practice, from memory; the limit stands in the profile",
    reads: [...NAMES, "wiring", "settings"],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      const contact = part.kind === "ground" ? 1 : part.kind === "supply" ? 2 : null;
      if (contact === null) continue;
      const wires = context.traced.wiresAt(contactKey(part.id, contact));
      const { value, book } = context.profile.limits.ringsOnStud;
      if (wires.length <= value) continue;
      const names = wires.map(({ designation }) => designation).sort(compareNames);
      yield {
        severity: wires.length > WEAK_ABOVE ? "weak" : "tidy",
        message: `${wires.length} rings lie on ${part.designation}${contact === 2 ? "'s minus post" : ""}: ${sayList(names, 8)}. At most ${value} may (${book}).`,
        consequence: "The top ring works loose, and one slack nut takes the ground from every unit on it.",
        remedy: "Set a second stud, or a bus bar with one thick lead to the stud.",
        about: contact === 2 ? [{ part: part.id, contact: 2 }] : [{ part: part.id }],
      };
    }
  },
});
