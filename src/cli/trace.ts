import { findContact, nameContactOf } from "../catalogue/describe.ts";
import { contactKey, contactsOf } from "../graph/contacts.ts";
import type { Harness } from "../graph/harness.ts";
import { trace } from "../graph/trace.ts";
import { sayCircuit } from "../rules/say.ts";
import { sayWire } from "../rules/words.ts";
import { readArguments } from "./arguments.ts";
import { readHarness } from "./files.ts";
import { count, EXIT, plain, say, Unusable } from "./unusable.ts";

export const usage = "pigtail trace FILE CONTACT";

const MOST_NAMED = 12;

/** Says what a contact is joined to and what feeds it, and lists the wires of its circuit. */
export async function run(given: readonly string[]): Promise<number> {
  const { positionals } = readArguments(given, {}, { usage, least: 2, most: 2 });
  const [path, name] = positionals as [string, string];
  const harness = readHarness(path).harness;
  const at = findContact(harness, name);
  if (!at) throw new Unusable(`There is no contact ${plain(name)}. ${suggestion(harness, name)}`);
  const traced = trace(harness);
  const key = contactKey(at.part, at.contact);
  say(plain(sayCircuit(harness, traced, key)));
  const wires = traced.circuitOf(key)?.wires ?? [];
  if (wires.length)
    say(
      `${count(wires.length, "wire")}: ${wires.map((id) => plain(sayWire(harness.wires[id]!))).join(", ")}`,
    );
  return EXIT.clean;
}

/** The contacts of the part that was meant, else the parts that there are. */
function suggestion(harness: Harness, name: string): string {
  const parts = Object.values(harness.parts);
  const meant = parts.find((part) => part.designation === name.split(".")[0]);
  const known = meant
    ? contactsOf(meant).map((contact) => nameContactOf(meant, contact, contact.number))
    : parts.map((part) => part.designation);
  if (!known.length) return "The harness has no parts.";
  const shown = known.slice(0, MOST_NAMED).map(plain).join(", ");
  const more = known.length > MOST_NAMED ? ` and ${known.length - MOST_NAMED} more` : "";
  return `→ ${meant ? "Its contacts" : "The parts"} are ${shown}${more}; name one like X1.A4.`;
}
