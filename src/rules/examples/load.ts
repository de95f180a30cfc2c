import type { Rule } from "../rule.ts";
import type { ExampleGroup, Examples, RuleExample } from "./example.ts";

/** A group's examples are fetched when a page of it is opened: a check has no need of them. */
const LOAD: Readonly<Record<ExampleGroup, () => Promise<{ readonly examples: Examples }>>> = {
  spares: () => import("./spares/index.ts"),
  feeds: () => import("./feeds/index.ts"),
  protection: () => import("./protection/index.ts"),
  grounds: () => import("./grounds/index.ts"),
  speakers: () => import("./speakers/index.ts"),
  signals: () => import("./signals/index.ts"),
  control: () => import("./control/index.ts"),
  camera: () => import("./camera/index.ts"),
  relays: () => import("./relays/index.ts"),
  data: () => import("./data/index.ts"),
  joints: () => import("./joints/index.ts"),
  routing: () => import("./routing/index.ts"),
  trailer: () => import("./trailer/index.ts"),
  people: () => import("./people/index.ts"),
  drawing: () => import("./drawing/index.ts"),
};

/** The example of a rule; `null` for a shop's own, which has none. */
export async function loadExample(rule: Rule): Promise<RuleExample | null> {
  const { id, group } = rule.meta;
  if (group === "own") return null;
  return (await LOAD[group]()).examples[id] ?? null;
}
