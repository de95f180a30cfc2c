import { apply } from "../../src/graph/edits/apply.ts";
import type { Edit } from "../../src/graph/edits/edit.ts";
import type { Harness } from "../../src/graph/harness.ts";
import { parse, serialise } from "../../src/graph/parse/parse.ts";
import { arrangeInNode } from "../../src/layout/arrange/node.ts";
import { arrangementEdit, arrangeProblem } from "../../src/layout/arrangement.ts";
import { SAMPLE_LIST } from "../list.ts";
import { reversingCamera } from "./camera.ts";
import { fullBuild } from "./full-build.ts";
import { interfaceModule } from "./interface.ts";
import { faultyReceiverAdapter, receiverAdapter } from "./receiver-adapter.ts";
import { amplifiedSound } from "./sound.ts";
import { trailerAdapter } from "./trailer.ts";
import { workLamps } from "./work-lamps.ts";

const MAKERS: Readonly<Record<string, () => Harness>> = {
  "wren-receiver-adapter": receiverAdapter,
  "wren-receiver-adapter-faults": faultyReceiverAdapter,
  "reversing-camera": reversingCamera,
  "amplified-sound": amplifiedSound,
  "interface-module": interfaceModule,
  "trailer-13-to-7": trailerAdapter,
  "work-lamp-relay": workLamps,
  "full-build": fullBuild,
};

/** Drawings too large for one A4 sheet are printed on the trade's usual larger one. */
const ON_A3 = new Set([
  "reversing-camera",
  "interface-module",
  "work-lamp-relay",
  "amplified-sound",
  "full-build",
]);
const ON_END = new Set(["amplified-sound"]);
/** The faulty twin stands as the sound one does, so that the two sheets can be laid side by side. */
const TWIN = "wren-receiver-adapter-faults";
const TWIN_OF = "wren-receiver-adapter";

/**
 * Makes a sample's file.
 * @param read the text of a sample's file as it is, or `null`: where its parts were placed stays, as a person's
 *   hand or an earlier arrangement left it
 * @param arrange lets the parts be placed anew
 * @throws RangeError for a name that is not in the list
 */
export async function makeSample(
  id: string,
  read: (id: string) => string | null,
  arrange = false,
): Promise<string> {
  const make = MAKERS[id];
  if (!make) throw new RangeError(`there is no sample ${id}`);
  const kept = id === TWIN ? read(TWIN_OF) : arrange ? null : read(id);
  const made = make();
  const sheet = {
    ...made.settings.sheet,
    size: ON_A3.has(id) ? "A3" : "A4",
    orientation: ON_END.has(id) ? "portrait" : "landscape",
  } as const;
  return written(await laidOut({ ...made, settings: { ...made.settings, sheet } }, kept));
}

/** The text as saving it again would leave it. */
function written(harness: Harness): string {
  const result = parse(serialise(harness));
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 1));
  return serialise(result.harness);
}

async function laidOut(harness: Harness, kept: string | null): Promise<Harness> {
  const before = kept === null ? null : parse(kept);
  const edit: Edit = before?.ok
    ? { kind: "lay-out", places: before.harness.layout.places, paths: {} }
    : arrangementEdit(harness, await arrangeInNode(arrangeProblem(harness)));
  const result = apply(harness, edit);
  if (!result.ok) throw new Error(result.why);
  return result.harness;
}

/** Every sample of the list by name. */
export const SAMPLE_IDS: readonly string[] = SAMPLE_LIST.map((entry) => entry.id);
