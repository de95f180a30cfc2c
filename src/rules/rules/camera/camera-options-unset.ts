import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { camerasOf } from "../../shared/cameras.ts";
import { isOrAre, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "camera-options-unset",
    group: "camera",
    severity: "weak",
    summary: "The options of a camera, mirror and guide lines, are recorded, and set as the job wants them.",
    source: "a tips page on wiring a camera; that makers cut or join the loops: as it says there",
    reads: [...NAMES, "functions"],
    fixable: false,
    brings: ["configuration-switch-unset", "configuration-switch-wrong"],
  },
  *check(context) {
    for (const { part } of camerasOf(context)) {
      if (part.kind !== "module") continue;
      const unset = part.switches.filter(
        ({ position, wanted }) => position === "unset" && wanted !== "either",
      );
      const wrong = part.switches.filter(
        ({ position, wanted }) =>
          position !== "unset" && (wanted === "on" || wanted === "off") && position !== wanted,
      );
      if (!unset.length && !wrong.length) continue;
      const say = (list: typeof unset) =>
        sayList(list.map(({ label, meaning }) => (meaning ? `${label} (${meaning})` : label)));
      const said = [
        ...(unset.length ? [`${say(unset)} ${isOrAre(unset)} not recorded`] : []),
        ...wrong.map(
          (one) =>
            `${say([one])} ${one.position === "on" ? "is on and ought to be off" : "is off and ought to be on"}`,
        ),
      ];
      yield {
        severity: wrong.length ? "fault" : "weak",
        message: `Options of ${part.designation}: ${said.join("; ")}.`,
        consequence:
          "The picture may be mirrored, upside down, or have two sets of guide lines: the driver steers the wrong way.",
        remedy:
          "Look which loops are cut or joined, check the picture with something at one side only, and write down the position of each.",
        about: [{ part: part.id }],
      };
    }
  },
});
