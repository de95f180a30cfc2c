import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/insulation-too-cool-for-engine-bay.ts";
import { testRule } from "../test-rule.ts";

const bay = { zone: "engine-bay" } as const;
const cool = { insulation: "thin-wall-85" } as const;
const at = (engineBay_degC: number) => {
  const { electrical } = loom({}).harness.settings;
  return { electrical: { ...electrical, engineBay_degC } };
};

testRule(rule, {
  silent: [
    { name: "105 °C", build: loom(bay, { insulation: "thin-wall-105" }) },
    { name: "nobody has said", build: loom(bay) },
    { name: "in the cabin", build: loom({ zone: "cabin" }, cool) },
    { name: "in a heat sleeve", build: loom({ ...bay, covering: "heat-sleeve" }, cool) },
    { name: "a bay that is said to be cool", build: loom(bay, cool).settings(at(60)) },
    { name: "aboard a boat", build: loom(bay, cool).rules({ profile: "boat" }) },
  ],
  found: [
    {
      name: "85 °C",
      build: loom(bay, cool),
      findings: [
        { at: ["W1"], says: "W1 (grey) bears 85 °C", fix: null },
        { at: ["W2"], fix: null },
      ],
    },
    {
      name: "a bay that is said to be hot",
      build: loom(bay, { insulation: "thin-wall-105" }).settings(at(120)),
      findings: [
        { at: ["W1"], says: "120 °C, as the settings say", fix: null },
        { at: ["W2"], fix: null },
      ],
    },
  ],
});
