import { join } from "node:path";
import { root } from "./process.mjs";
import { setUp } from "./set-up.mjs";

/** `npm start`: everything from a fresh clone to an open page. */
async function start() {
  const asked = process.env.PORT ?? "5180";
  const port = Number(asked);
  if (!/^\d+$/.test(asked) || port > 65_535)
    throw new Error(`PORT is "${asked}". Set it to a number up to 65535.`);
  await setUp();
  const { build } = await import("./build.mjs");
  await build();
  const { serve } = await import("./serve.mjs");
  const server = await serve(join(root, "dist"), port);
  console.log(`Pigtail is at http://localhost:${server.port}/?sample=wren-receiver-adapter`);
  for (const signal of ["SIGINT", "SIGTERM"]) {
    process.once(signal, () => {
      server.close();
      process.exit(0);
    });
  }
}

try {
  await start();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
