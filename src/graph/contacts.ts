import type { Cavity, ContactRef, Direction, End, Part, PartId, Relay } from "./harness.ts";

/** One contact of any part, as the rest of the program reads it. */
export type Contact = {
  /** From 1, in the part's own order. */
  readonly number: number;
  /** What is printed beside it: "A4", "85", "+". */
  readonly label: string;
  /** A function name of the catalogue; "unknown" where nothing is stated. */
  readonly function: string;
  readonly direction: Direction;
  /** Only contacts of a housing or a module have one. */
  readonly cavity: Cavity | null;
};

const RELAY_LABELS: Record<Relay["poles"], readonly string[]> = {
  make: ["30", "85", "86", "87"],
  changeover: ["30", "85", "86", "87", "87a"],
  "double-make": ["30", "85", "86", "87", "87b"],
};

const plain = (number: number, label: string, name = "unknown", direction: Direction = "none"): Contact => ({
  number,
  label,
  function: name,
  direction,
  cavity: null,
});

const remembered = new WeakMap<Part, readonly Contact[]>();

/**
 * The contacts of a part, in order, numbered from 1. The same part object always gives the same array.
 * Two-ended parts: 1 is the plus, anode or left side; 2 the minus, cathode or right side. A splice's two
 * contacts are its two sides, joined inside. Relay labels are DIN 72552 terminals.
 */
export function contactsOf(part: Part): readonly Contact[] {
  const known = remembered.get(part);
  if (known) return known;
  const made = makeContacts(part);
  remembered.set(part, made);
  return made;
}

function makeContacts(part: Part): readonly Contact[] {
  switch (part.kind) {
    case "connector":
    case "module":
      return part.cavities.map((cavity, index) => ({
        number: index + 1,
        label: cavity.label,
        function: cavity.function,
        direction: cavity.direction,
        cavity,
      }));
    case "splice":
      return [plain(1, "1"), plain(2, "2")];
    case "cap":
      return [plain(1, "1")];
    case "ground":
      return [plain(1, "1", "ground", "gives")];
    case "supply":
      return [plain(1, "+", "constant-feed", "gives"), plain(2, "−", "ground", "gives")];
    case "relay":
      return RELAY_LABELS[part.poles].map((label, index) => plain(index + 1, label));
    case "diode":
      return [plain(1, "A"), plain(2, "K")];
    case "load":
      return [plain(1, "+", part.function, "takes"), plain(2, "−", "ground", "takes")];
    case "speaker": {
      const channel = part.position;
      const named = channel !== "other";
      return [
        plain(1, "+", named ? `speaker-${channel}-plus` : "unknown", "takes"),
        plain(2, "−", named ? `speaker-${channel}-minus` : "unknown", "takes"),
      ];
    }
    case "fuse":
    case "switch":
    case "resistor":
    case "capacitor":
      return [plain(1, "1"), plain(2, "2")];
  }
}

/** "p:1#4": a contact as a key of maps. */
export type ContactKey = `${string}#${number}`;

export function contactKey(part: PartId, contact: number): ContactKey {
  return `${part}#${contact}`;
}

const rememberedKeys = new WeakMap<Part, readonly ContactKey[]>();

/** The keys of a part's contacts, in order. The same part object always gives the same array. */
export function keysOf(part: Part): readonly ContactKey[] {
  let keys = rememberedKeys.get(part);
  if (!keys) {
    keys = contactsOf(part).map((contact) => contactKey(part.id, contact.number));
    rememberedKeys.set(part, keys);
  }
  return keys;
}

export function keyOfEnd(end: End): ContactKey | null {
  return end === "loose" ? null : contactKey(end.part, end.contact);
}

export function refOfKey(key: ContactKey): ContactRef {
  const mark = key.lastIndexOf("#");
  return { part: key.slice(0, mark) as PartId, contact: Number(key.slice(mark + 1)) };
}

export function sameEnd(a: End, b: End): boolean {
  if (a === "loose" || b === "loose") return a === b;
  return a.part === b.part && a.contact === b.contact;
}
