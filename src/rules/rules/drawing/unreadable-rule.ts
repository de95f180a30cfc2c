import { unreadable } from "../../own/own-rule.ts";
import { defineRule } from "../../rule.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "unreadable-rule",
    group: "drawing",
    severity: "weak",
    summary: "Every rule that the shop has written down can be read.",
    source: "a promise of this program: what it does not understand it does not pass over",
    reads: ["settings", "parts"],
    fixable: false,
  },
  *check(context) {
    const { own } = context.harness.settings.rules;
    const [place] = context.parts;
    if (!own.length || !place) return;
    const bad = own.filter((rule) => unreadable(rule).length);
    if (!bad.length) return;
    const each = bad.map(
      (rule) => `“${rule.words}” (${sayList(unreadable(rule).map(({ property }) => property))})`,
    );
    yield {
      message: `Of the shop's own rules, ${sayList(each)} cannot be read by this version.`,
      consequence: "Nothing is judged by it, though the list of rules looks as if it were.",
      remedy: "Open the shop's rules and put the condition right, or open the file in a newer Pigtail.",
      about: [{ part: place.id }],
    };
  },
});
