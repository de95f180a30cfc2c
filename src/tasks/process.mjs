import { spawn, spawnSync } from "node:child_process";
import { realpathSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the repository. */
export const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/**
 * Runs a program in the repository and waits for it. Its whole process group ends with us or after the time
 * limit, so no server or browser outlives the script that asked for it.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ env?: Record<string, string>, limit_min?: number, quiet?: boolean }} [options]
 * @returns {Promise<{ code: number, timedOut: boolean, output: string }>} `output` is filled when quiet
 */
export function run(command, args, options = {}) {
  const windows = process.platform === "win32";
  const child = spawn(command, args, {
    cwd: root,
    env: { ...process.env, ...options.env },
    stdio: options.quiet ? ["ignore", "pipe", "pipe"] : ["ignore", "inherit", "inherit"],
    detached: !windows,
    shell: windows,
  });
  let timedOut = false;
  const end = () => {
    if (child.pid === undefined) return;
    try {
      if (windows) child.kill();
      else process.kill(-child.pid, "SIGKILL");
    } catch {
      // It has ended already.
    }
  };
  const interrupted = () => {
    end();
    process.exit(130);
  };
  process.once("SIGINT", interrupted);
  process.once("SIGTERM", interrupted);
  const limit = setTimeout(
    () => {
      timedOut = true;
      end();
    },
    (options.limit_min ?? 30) * 60_000,
  );
  return new Promise((done) => {
    let output = "";
    child.stdout?.on("data", (chunk) => {
      output += chunk;
    });
    child.stderr?.on("data", (chunk) => {
      output += chunk;
    });
    /** @param {number} code */
    const finish = (code) => {
      clearTimeout(limit);
      process.removeListener("SIGINT", interrupted);
      process.removeListener("SIGTERM", interrupted);
      end();
      done({ code, timedOut, output });
    };
    child.once("error", (error) => {
      output += error.message;
      finish(127);
    });
    child.once("close", (code) => finish(code ?? 1));
  });
}

/**
 * A program of an installed package, started by this very Node, so that no shell or PATH matters.
 * @param {string} script path inside node_modules
 * @param {readonly string[]} args
 * @param {Parameters<typeof run>[2]} [options]
 */
export function runNode(script, args, options) {
  return run(process.execPath, [join(root, "node_modules", script), ...args], options);
}

/**
 * Whether a program answers when asked for its version: a file of that name may be a stub that cannot run.
 * @param {string} command
 */
export function answers(command) {
  return spawnSync(command, ["--version"], { stdio: "ignore", timeout: 30_000 }).status === 0;
}

/**
 * Whether a module is the one that Node was started with.
 * @param {string} url `import.meta.url` of the module
 */
export function isMain(url) {
  const started = process.argv[1];
  return started !== undefined && fileURLToPath(url) === realpathSync(started);
}
