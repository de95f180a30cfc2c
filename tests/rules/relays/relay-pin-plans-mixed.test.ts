import rule from "../../../src/rules/rules/relays/relay-pin-plans-mixed.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = (...poles: readonly ("make" | "changeover" | "double-make")[]) => {
  const harness = build().vehicle("X1", { "1": "constant-feed fuse:20" });
  for (const [index, one] of poles.entries())
    harness.part("relay", `K${index + 1}`, { poles: one }).wire("X1.1", `K${index + 1}.30`);
  return harness;
};
const lamp = (harness: ReturnType<typeof bench>, name: string, means: string, at: string) =>
  harness.part("load", name, { type: "lamp", function: means }).wire(at, `${name}.+`);

testRule(rule, {
  silent: [
    {
      name: "two lamps on two contacts 87",
      build: lamp(lamp(bench("double-make"), "E1", "work-lamp", "K1.87"), "E2", "work-lamp", "K1.87b"),
    },
    {
      name: "one or the other",
      build: lamp(lamp(bench("changeover"), "E1", "main-beam", "K1.87"), "E2", "low-beam", "K1.87a"),
    },
    {
      name: "one kind of relay",
      build: lamp(bench("changeover", "changeover"), "E1", "work-lamp", "K1.87a"),
    },
    {
      name: "a middle blade that nobody uses",
      build: lamp(
        lamp(bench("changeover", "double-make"), "E1", "work-lamp", "K1.87"),
        "E2",
        "horn",
        "K2.87b",
      ),
    },
  ],
  found: [
    {
      name: "wired for two contacts 87",
      build: lamp(lamp(bench("changeover"), "E1", "work-lamp", "K1.87"), "E2", "work-lamp", "K1.87a"),
      findings: [{ at: ["K1.87", "K1.87a"], severity: "weak", says: "E1.+ and E2.+", fix: null }],
    },
    {
      name: "both kinds in one harness",
      build: lamp(
        lamp(bench("changeover", "double-make"), "E1", "low-beam", "K1.87a"),
        "E2",
        "horn",
        "K2.87b",
      ),
      findings: [{ at: ["K1", "K2"], says: "of one shape", fix: null }],
    },
  ],
});
