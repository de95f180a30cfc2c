import { readSize, writeSize } from "../../catalogue/conductors.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { type Refused, refused } from "../../graph/edits/edit.ts";
import type { Load, Settings } from "../../graph/harness.ts";
import { readFunction } from "../../match/read-words.ts";

/** What a field of the details holds and how it is written. `read` gives the value, or why it is not one. */
export type Field = {
  readonly key: string;
  readonly name: string;
  readonly look: "line" | "lines" | "choice" | "flag" | "function" | "ticks";
  readonly text: string;
  /** Stands behind the figure. */
  readonly unit?: string;
  readonly choices?: readonly (readonly [value: string, name: string])[];
  readonly hint?: string;
  /** A sentence for whoever does not know what is asked, shown on asking. */
  readonly help?: string;
  /** Seldom stated: stands under "More". */
  readonly more?: boolean;
  readonly read: (text: string) => { readonly ok: true; readonly value: unknown } | Refused;
};

const took = (value: unknown) => ({ ok: true, value }) as const;

export function lineField(key: string, name: string, text: string, hint?: string): Field {
  return { key, name, look: "line", text, ...(hint ? { hint } : {}), read: (typed) => took(typed.trim()) };
}

export function noteField(text: string): Field {
  return { key: "note", name: "Note", look: "lines", text, read: (typed) => took(typed) };
}

/** A designation: something must stand there, and no other part may have it. */
export function designationField(text: string, taken: ReadonlySet<string>): Field {
  return {
    key: "designation",
    name: "Designation",
    look: "line",
    text,
    read: (typed) => {
      const name = typed.trim();
      if (name === "") return refused("It needs a designation, like X1.");
      if (name !== text && taken.has(name)) return refused(`Another one is called ${name}.`);
      return took(name);
    },
  };
}

/** A line that may be nothing: kept as `null`. */
export function optionalField(key: string, name: string, text: string | null, hint?: string): Field {
  return {
    ...lineField(key, name, text ?? "", hint),
    read: (typed) => took(typed.trim() === "" ? null : typed.trim()),
  };
}

/** A figure in a unit; an empty field means that it is not known. */
export function figureField(
  key: string,
  name: string,
  value: number | "unknown" | null,
  unit: string,
  limits: { readonly least?: number; readonly most?: number; readonly required?: true } = {},
): Field {
  return {
    key,
    name,
    look: "line",
    unit,
    text: typeof value === "number" ? String(value) : "",
    hint: limits.required ? "" : "not known",
    read: (typed) => {
      const plain = typed.trim().replace(",", ".");
      if (plain === "") return limits.required ? refused(`${name} needs a figure.`) : took("unknown");
      const digits = /^[+-]?\d*\.?\d+(?:e[+-]?\d+)?(?=\s*[^\d.]*$)/i.exec(plain)?.[0];
      const figure = digits === undefined ? Number.NaN : Number(digits);
      if (!Number.isFinite(figure)) return refused(`"${typed}" is not a figure in ${unit || "numbers"}.`);
      const { least = 0, most = 1e9 } = limits;
      if (figure < least || figure > most)
        return refused(`It must lie between ${least} and ${most} ${unit}.`);
      return took(figure);
    },
  };
}

/** A wire size, written as the harness writes sizes. */
export function sizeField(key: string, value: number | "unknown", sizes: Settings["sizes"]): Field {
  return {
    key,
    name: "Size",
    look: "line",
    text: writeSize(value, sizes),
    hint: "not known",
    read: (typed) => {
      if (typed.trim() === "") return took("unknown");
      const area_mm2 = readSize(typed, sizes);
      const example = sizes === "awg" ? "18 AWG or 0.75 mm²" : "0.75 mm² or 18 AWG";
      return area_mm2 === null
        ? refused(`"${typed}" is not a size. Write one like ${example}.`)
        : took(area_mm2);
    },
  };
}

/** A function of the catalogue, by name or in a chart's words. */
export function functionField(key: string, name: string, id: string): Field {
  return {
    key,
    name,
    look: "function",
    text: id === "unknown" ? "" : functionOf(id).id === "unknown" ? id : functionOf(id).name,
    hint: "not known",
    read: (typed) => {
      if (typed.trim() === "") return took("unknown");
      const read = readFunction(typed);
      return read
        ? took(read)
        : refused(`"${typed}" fits no function, or more than one. Choose one from the list.`);
    },
  };
}

export function choiceField<T extends string>(
  key: string,
  name: string,
  value: T,
  values: readonly T[],
  names: Partial<Record<T, string>> = {},
): Field {
  return {
    key,
    name,
    look: "choice",
    text: value,
    choices: values.map((one) => [one, names[one] ?? inWords(one)] as const),
    read: (typed) => took(typed),
  };
}

/** Some of a list, each ticked or not; `text` has them with a space between. */
export function ticksField<T extends string>(
  key: string,
  name: string,
  value: readonly T[],
  values: readonly T[],
  names: Partial<Record<T, string>> = {},
): Field {
  return {
    ...choiceField<string>(key, name, value.join(" "), values, names),
    look: "ticks",
    // In the order of the list, whichever was ticked first.
    read: (typed) => took(values.filter((one) => typed.split(" ").includes(one))),
  };
}

/** The words of what is ticked, or that nothing is. */
export function tickedWords(field: Field): string {
  const ticked = field.text.split(" ");
  const words = (field.choices ?? []).filter(([one]) => ticked.includes(one)).map(([, name]) => name);
  return words.join(", ") || "nothing stated";
}

/** Two figures with what stands between them, "9 to 16"; an empty field means that they are not known. */
export function voltsField(key: string, name: string, value: Load["voltage_V"]): Field {
  return {
    key,
    name,
    look: "line",
    unit: "V",
    text: value === "unknown" ? "" : `${value.least_V} to ${value.most_V}`,
    hint: "not known",
    read: (typed) => {
      if (typed.trim() === "") return took("unknown");
      const found = /^\s*(\d+(?:[.,]\d+)?)\s*V?\s*(?:to|-|–|…|\.\.\.?)\s*(\d+(?:[.,]\d+)?)\s*V?\s*$/i.exec(
        typed,
      );
      if (!found) return refused("Write the least and the most, like 9 to 16.");
      const [least_V, most_V] = [found[1]!, found[2]!].map((figure) => Number(figure.replace(",", "."))) as [
        number,
        number,
      ];
      if (most_V > 1000 || most_V <= 0) return refused("It must lie between 0 and 1000 V.");
      if (least_V > most_V) return refused("The least comes first, then the most.");
      return took({ least_V, most_V });
    },
  };
}

/** Whether something is stated in a field, so that one under "More" is not overlooked. */
export function isStated(field: Field): boolean {
  return field.text !== "" && field.text !== "unknown";
}

export function flagField(key: string, name: string, value: boolean): Field {
  return { key, name, look: "flag", text: value ? "yes" : "", read: (typed) => took(typed === "yes") };
}

/** "solder-and-sleeve" as a person reads it; "unknown" as "not known". */
export function inWords(value: string): string {
  if (value === "unknown" || value === "unset") return "not known";
  return value.replaceAll("-", " ");
}
