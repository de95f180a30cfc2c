import type { Field } from "./fields.ts";

/** The value that all share, or the news that they differ. */
export function sameOf<T, V>(
  list: readonly T[],
  value: (item: T) => V,
): { readonly same: true; readonly value: V } | { readonly same: false } {
  const [first, ...rest] = list;
  if (first === undefined) return { same: false };
  const wanted = value(first);
  return rest.every((item) => value(item) === wanted) ? { same: true, value: wanted } : { same: false };
}

/** Fields that mean one thing only and make no sense for several. */
const OWN = new Set(["designation", "name", "note", "label", "ends", "shell", "keying", "where"]);

/**
 * The fields that things of one kind have in common; where the values differ the field is empty and says so.
 * Things of different kinds have none.
 */
export function commonFields(
  things: readonly { readonly kind: string; readonly fields: readonly Field[] }[],
): readonly Field[] {
  const [first] = things;
  if (!first || things.some((thing) => thing.kind !== first.kind)) return [];
  return first.fields
    .filter((field) => !OWN.has(field.key))
    .flatMap((field): Field[] => {
      const all = things.map((thing) => thing.fields.find((other) => other.name === field.name));
      if (all.some((other) => other === undefined)) return [];
      if (all.every((other) => other?.text === field.text)) return [field];
      // Ticking one thing for all would take from each what only it has.
      if (field.look === "ticks") return [];
      if (field.look === "choice") {
        return [{ ...field, text: "", choices: [["", "several"], ...(field.choices ?? [])] }];
      }
      return [{ ...field, text: "", hint: "several" }];
    });
}
