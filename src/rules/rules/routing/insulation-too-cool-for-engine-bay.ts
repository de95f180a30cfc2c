import { insulationLimit_degC } from "../../../electrical/operate/resistances.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { loomsWhere, sayRun } from "../../shared/looms.ts";
import { sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "insulation-too-cool-for-engine-bay",
    group: "routing",
    severity: "weak",
    summary: "Wire in the engine bay has insulation that bears the heat there.",
    source:
      "ISO 6722-1 class A ends at 85 °C; a chassis maker's guide for body builders asks for 125 °C conduit under the bonnet; that a road vehicle's engine bay passes 85 °C: from memory",
    reads: [...NAMES, "wiring", "runs", "materials", "settings"],
    fixable: false,
  },
  *check(context) {
    const { electrical, rules } = context.harness.settings;
    const stated = electrical.engineBay_degC;
    // An engine room aboard a boat is ventilated: it is hot only where somebody says so.
    if (stated === "unknown" && rules.profile === "boat") return;
    const bay_degC = stated === "unknown" ? USUAL_degC : stated;
    const told = new Set<string>();
    const bays = loomsWhere(context, ({ zone, covering }) => zone === "engine-bay" && !SLEEVES.has(covering));
    for (const { run, wires } of bays) {
      for (const wire of wires) {
        const limit_degC = insulationLimit_degC(wire.insulation);
        if (limit_degC === null || limit_degC >= bay_degC || told.has(wire.id)) continue;
        told.add(wire.id);
        yield {
          message: `${sayWire(wire)} bears ${limit_degC} °C, and ${sayRun(run)} lies in the engine bay, where it can be ${bay_degC} °C${stated === "unknown" ? " (from memory)" : ", as the settings say"}.`,
          consequence: "The insulation goes soft, then brittle, and cracks off the copper.",
          remedy:
            "Use wire with insulation that bears it, or put it into a heat sleeve or conduit for 125 °C.",
          about: [{ wire: wire.id }],
        };
      }
    }
  },
});

/** Away from the exhaust, with the engine hot and the vehicle at rest. @source from memory */
const USUAL_degC = 100;
const SLEEVES: ReadonlySet<string> = new Set(["heat-sleeve", "conduit"]);
