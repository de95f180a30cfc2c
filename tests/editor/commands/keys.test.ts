import { expect, test } from "vitest";
import { registerAddCommands } from "../../../src/editor/commands/add-commands.ts";
import { registerArrangeCommands } from "../../../src/editor/commands/arrange-commands.ts";
import { registerCanvasCommands } from "../../../src/editor/commands/canvas-commands.ts";
import { allCommands, commandName, keysOf } from "../../../src/editor/commands/command.ts";
import { registerEditCommands } from "../../../src/editor/commands/edit-commands.ts";
import { registerFileCommands } from "../../../src/editor/commands/file-commands.ts";
import { registerHelpCommands } from "../../../src/editor/commands/help-commands.ts";
import { registerPrintCommands } from "../../../src/editor/commands/print-commands.ts";
import { registerViewCommands } from "../../../src/editor/commands/view-commands.ts";
import { createEditor } from "../../../src/editor/state/store.ts";

registerEditCommands();
registerAddCommands();
registerCanvasCommands();
registerArrangeCommands();
registerViewCommands();
registerPrintCommands();
registerHelpCommands();
registerFileCommands({} as Parameters<typeof registerFileCommands>[0]);

test("no two commands share keys, but for two that are never possible at once", () => {
  const owners = new Map<string, string[]>();
  for (const { id, keys } of allCommands()) {
    for (const key of keys) owners.set(key, [...(owners.get(key) ?? []), id]);
  }
  const shared = [...owners].filter(([, ids]) => ids.length > 1);
  expect(shared).toEqual([["p", ["pin", "unpin"]]]);
});

test("every command has a name in words, with an empty harness too", () => {
  const editor = createEditor();
  for (const command of allCommands())
    expect(commandName(command, editor), command.id).toMatch(/^\p{Lu}.{2,}/u);
});

test.each([
  [{ key: "z", ctrlKey: true, shiftKey: true, code: "KeyZ" }, "Mod+Shift+z"],
  [{ key: " ", code: "Space" }, "Space"],
  [{ key: "W", altKey: true, shiftKey: true, code: "KeyW" }, "Alt+Shift+w"],
  [{ key: "∑", altKey: true, code: "KeyW" }, "Alt+w"],
  [{ key: "?", shiftKey: true, code: "Slash" }, "Shift+?"],
])("%j is %s", (event, keys) => {
  const plain = { ctrlKey: false, altKey: false, shiftKey: false, metaKey: false };
  expect(keysOf({ ...plain, ...event } as KeyboardEvent)).toBe(keys);
});
