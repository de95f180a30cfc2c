import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { jointsOf, METHOD_WORDS } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "joint-not-by-the-book",
    group: "joints",
    severity: "weak",
    summary: "Leads are joined in the way that the harness's book asks for.",
    source:
      "FCS 1362:2010 §2.6.1.4: into an existing loom solder only; ABYC E-11, from memory: solder is not the only means of a joint; a chassis maker's guide for body builders allows both",
    reads: [...NAMES, "wiring", "joints", "settings"],
    fixable: true,
  },
  *check(context) {
    const { choice, book } = context.profile.joints;
    if (choice === "solder-or-crimp") return;
    const isSolder = choice === "solder-only";
    const wrong = isSolder ? "crimped-butt" : "solder-and-sleeve";
    for (const { part, wires } of jointsOf(context)) {
      if (part.method !== wrong) continue;
      yield {
        message: `${part.designation} is ${METHOD_WORDS[part.method]} of ${sayList(wires.map(sayWire))}; joints here are to be ${isSolder ? "soldered" : "crimped"} (${book}).`,
        consequence: isSolder
          ? "A crimp made by hand in an old loom is hard to get at and creeps loose."
          : "Solder runs up the strands; where it ends, shaking breaks them one by one.",
        remedy: isSolder
          ? "Solder the joint and sleeve it, or choose another rule for joints in the settings."
          : "Cut off what is tinned and crimp clean strands, or choose another rule for joints in the settings.",
        about: [{ part: part.id }],
        suggestions: [
          {
            label: `Make ${part.designation} ${isSolder ? "a soldered" : "a crimped"} joint`,
            edit: {
              kind: "change-part",
              part: part.id,
              changes: { method: isSolder ? "solder-and-sleeve" : "crimped-butt" },
            },
          },
        ],
      };
    }
  },
});
