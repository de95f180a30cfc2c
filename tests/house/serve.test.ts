import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { fileFor, serve } from "../../src/tasks/serve.mjs";

let outside: string;
let folder: string;

beforeAll(() => {
  outside = mkdtempSync(join(tmpdir(), "pigtail-serve-"));
  folder = join(outside, "dist");
  mkdirSync(join(folder, "assets"), { recursive: true });
  mkdirSync(join(outside, "dist-other"));
  writeFileSync(join(outside, "secret.txt"), "secret");
  writeFileSync(join(outside, "dist-other", "secret.txt"), "secret");
  writeFileSync(join(folder, "index.html"), "<p>page</p>");
  writeFileSync(join(folder, "assets", "letters.ttf"), "letters");
  writeFileSync(join(folder, "a b.json"), "{}");
});
afterAll(() => rmSync(outside, { recursive: true }));

test.each([
  ["/", "index.html"],
  ["/?sample=wren-receiver-adapter", "index.html"],
  ["/assets/letters.ttf", "assets/letters.ttf"],
  ["/a%20b.json", "a b.json"],
])("%s is answered with %s", (address, file) => {
  expect(fileFor(folder, address)).toBe(join(folder, file));
});

test.each([
  "/../secret.txt",
  "/%2e%2e/secret.txt",
  "/..%2fsecret.txt",
  "/assets/../../secret.txt",
  "/../dist-other/secret.txt",
  "/..\\secret.txt",
  "/%00",
  "/%",
  "/assets",
  "/none.js",
])("%s is answered with nothing", (address) => {
  expect(fileFor(folder, address)).toBeNull();
});

test("says what a file is, refuses what it cannot do, and steps past a taken port", async () => {
  const first = await serve(folder, 0);
  const second = await serve(folder, first.port);
  try {
    expect(second.port).toBeGreaterThan(first.port);
    const font = await fetch(`http://127.0.0.1:${second.port}/assets/letters.ttf`);
    expect(font.headers.get("content-type")).toBe("font/ttf");
    expect(await font.text()).toBe("letters");
    const page = await fetch(`http://127.0.0.1:${first.port}/`);
    expect(page.headers.get("content-type")).toBe("text/html; charset=utf-8");
    expect((await fetch(`http://127.0.0.1:${first.port}/none`)).status).toBe(404);
    expect((await fetch(`http://127.0.0.1:${first.port}/`, { method: "POST" })).status).toBe(405);
    expect(await rawStatus(first.port, "/../secret.txt")).toBe(404);
  } finally {
    first.close();
    second.close();
  }
});

/** `fetch` tidies a path before sending it; an attacker does not. */
function rawStatus(port: number, path: string): Promise<number | undefined> {
  return new Promise((done, fail) => {
    request({ host: "127.0.0.1", port, path }, (response) => {
      response.resume();
      done(response.statusCode);
    })
      .on("error", fail)
      .end();
  });
}
