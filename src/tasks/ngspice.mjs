import { existsSync } from "node:fs";
import { answers, run } from "./process.mjs";

/**
 * Installs ngspice for the tests of the circuit solver, where that is possible without asking anybody: on a Debian-like
 * system, as root. Elsewhere it is left to those tests to fail and say how to get it, since nothing else needs it.
 */
export async function offerNgspice() {
  if (answers("ngspice") || process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return;
  console.log("Installing ngspice for the tests of the circuit solver.");
  const env = { DEBIAN_FRONTEND: "noninteractive" };
  const install = ["install", "-y", "--no-install-recommends", "ngspice"];
  let result = await run("apt-get", install, { env, quiet: true });
  if (result.code !== 0) {
    await run("apt-get", ["update"], { env, quiet: true });
    result = await run("apt-get", install, { env, quiet: true });
  }
  if (result.code !== 0) console.error(result.output.split("\n").slice(-15).join("\n"));
}
