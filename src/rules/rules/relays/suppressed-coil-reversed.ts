import { exchange } from "../../../graph/edits/lead.ts";
import type { Diode } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Fix, fixWith } from "../../rule.ts";
import { contactOf, isGroundSide, isPlusSide, type Wired, wiredRelays } from "../../shared/relays.ts";
import { compareNames } from "../../words.ts";

export default defineRule({
  meta: {
    id: "suppressed-coil-reversed",
    group: "relays",
    severity: "fault",
    summary: "The diode across a relay's coil has its stripe at the plus side.",
    source: "a control-training page on polarised relays",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    const relays = wiredRelays(context);
    if (!relays.length) return;
    const diodes = context.parts.filter((part): part is Diode => part.kind === "diode");
    for (const wired of relays) {
      const { relay, c85, c86 } = wired;
      if (relay.suppression === "diode" && isPlus(context, c85) && isMinus(context, c86)) {
        yield {
          message: `${relay.designation} has a diode inside, and its plus lies on 85 instead of 86.`,
          consequence:
            "The diode conducts as soon as the coil is switched on: a short, which takes the output or the fuse that drives it, and the relay never pulls.",
          remedy: "Exchange 85 and 86, or use a relay with a resistor in place of the diode.",
          about: [contactOf(context, relay, 2).at, contactOf(context, relay, 3).at],
          fix: turn(context, relay.id, 2, 3, `Exchange the leads at 85 and 86 of ${relay.designation}`),
        };
      }
      for (const diode of acrossCoil(context, wired, diodes)) {
        yield {
          message: `${diode.designation} lies across the coil of ${relay.designation} with its stripe towards ground.`,
          consequence:
            "The diode conducts as soon as the coil is switched on: a short, which takes the output or the fuse that drives it, and the relay never pulls.",
          remedy: `Turn ${diode.designation} round: its stripe belongs to the plus side of the coil.`,
          about: [{ part: diode.id }, { part: relay.id }],
          fix: turn(context, diode.id, 1, 2, `Turn ${diode.designation} round`),
        };
      }
    }
  },
});

type At = Wired["c85"];

function isPlus(context: Context, circuit: At): boolean {
  return isPlusSide(context, circuit) && !isGroundSide(context, circuit);
}

function isMinus(context: Context, circuit: At): boolean {
  return isGroundSide(context, circuit) && !isPlusSide(context, circuit);
}

/** Diodes that conduct from the driven end of the coil to ground, past the coil. */
function acrossCoil(context: Context, { c85, c86 }: Wired, diodes: readonly Diode[]): readonly Diode[] {
  return diodes
    .filter((diode) => {
      const anode = context.points.circuitAt(diode.id, 1);
      const cathode = context.points.circuitAt(diode.id, 2);
      if (anode === cathode || (anode !== c85 && anode !== c86)) return false;
      const other = anode === c85 ? c86 : c85;
      const meets = cathode === other || (context.grounds.isLive(cathode) && context.grounds.isLive(other));
      // The other way on from the cathode: a diode that leads to the next thing, not to ground.
      return meets && isPlusSide(context, anode) && isGroundSide(context, cathode);
    })
    .sort((a, b) => compareNames(a.designation, b.designation));
}

function turn(
  context: Context,
  part: Diode["id"] | Wired["relay"]["id"],
  a: number,
  b: number,
  label: string,
): Fix {
  return fixWith(label, () => exchange(context.harness, { part, contact: a }, { part, contact: b }));
}
