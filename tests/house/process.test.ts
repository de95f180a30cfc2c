import { expect, test } from "vitest";
import { run } from "../../src/tasks/process.mjs";

test("a program that hangs is ended with all that it started, and that is told", async () => {
  const inner = "setInterval(() => {}, 1000)";
  const outer = `
    const child = require("node:child_process").spawn(process.execPath, ["-e", ${JSON.stringify(inner)}]);
    console.log(child.pid);
    ${inner}`;
  const result = await run(process.execPath, ["-e", outer], { limit_min: 0.02, quiet: true });
  expect(result.timedOut).toBe(true);
  expect(result.code).not.toBe(0);
  const pid = Number(result.output);
  expect(pid).toBeGreaterThan(1);
  await expect.poll(() => alive(pid), { timeout: 5000 }).toBe(false);
});

test("a program that cannot be found is a failure with words", async () => {
  const result = await run("pigtail-no-such-program", [], { quiet: true });
  expect(result.code).not.toBe(0);
  expect(result.output).toMatch(/pigtail-no-such-program/);
});

function alive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}
