import type { Rule } from "./rule.ts";
import { rules as camera } from "./rules/camera/index.ts";
import { rules as control } from "./rules/control/index.ts";
import { rules as data } from "./rules/data/index.ts";
import { rules as drawing } from "./rules/drawing/index.ts";
import { rules as feeds } from "./rules/feeds/index.ts";
import { rules as grounds } from "./rules/grounds/index.ts";
import { rules as joints } from "./rules/joints/index.ts";
import { rules as people } from "./rules/people/index.ts";
import { rules as protection } from "./rules/protection/index.ts";
import { rules as relays } from "./rules/relays/index.ts";
import { rules as routing } from "./rules/routing/index.ts";
import { rules as signals } from "./rules/signals/index.ts";
import { rules as spares } from "./rules/spares/index.ts";
import { rules as speakers } from "./rules/speakers/index.ts";
import { rules as trailer } from "./rules/trailer/index.ts";

/** Every rule, group by group, in the order in which a page lists them. One file each; the file is named for the rule. */
export const RULES: readonly Rule[] = [
  ...spares,
  ...feeds,
  ...protection,
  ...grounds,
  ...speakers,
  ...signals,
  ...control,
  ...camera,
  ...relays,
  ...data,
  ...joints,
  ...routing,
  ...trailer,
  ...people,
  ...drawing,
];

const byId = new Map(RULES.map((rule) => [rule.meta.id, rule]));

/** The rule of that name; `undefined` for a waiver of a rule that this version has not heard of. */
export function ruleOf(id: string): Rule | undefined {
  return byId.get(id);
}
