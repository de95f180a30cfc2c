import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { register } from "tsx/esm/api";
import { isMain, root } from "./process.mjs";

/** `node src/tasks/make-schema.mjs` writes src/graph/harness.schema.json from the schema the program itself reads by. */
if (isMain(import.meta.url)) {
  register();
  const { harnessJsonSchema } = await import("../graph/schema/json-schema.ts");
  const file = join(root, "src", "graph", "harness.schema.json");
  writeFileSync(file, `${JSON.stringify(harnessJsonSchema(), null, 2)}\n`);
  console.log(`Wrote ${file}.`);
}
