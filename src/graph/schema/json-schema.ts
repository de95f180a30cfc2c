import * as z from "zod/mini";
import { FORMAT_VERSION, harness } from "./harness.ts";

/**
 * The document as a JSON Schema (draft 2020-12), for editors and for whoever writes harness files by a program.
 * It says what one field may hold; that ends and references name something the file has, only `parse` knows.
 */
export function harnessJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(harness, { target: "draft-2020-12", reused: "ref" });
  return {
    $schema,
    title: `Pigtail harness, format version ${FORMAT_VERSION}`,
    description:
      "A wiring harness: parts, wires, cables, runs, and the papers that go with them. Ids are keys and stand in the entry too. Unknown fields are allowed and kept.",
    ...rest,
  };
}
