import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, resolve, sep } from "node:path";

/** @type {Readonly<Record<string, string>>} */
const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".wasm": "application/wasm",
  ".ttf": "font/ttf",
  ".woff2": "font/woff2",
  ".pdf": "application/pdf",
  ".txt": "text/plain; charset=utf-8",
};

/**
 * Finds the file that an address asks for.
 * @param {string} folder what is served
 * @param {string} address path and query of a request
 * @returns {string | null} null for anything that is not a file inside the folder
 */
export function fileFor(folder, address) {
  let path;
  try {
    path = decodeURIComponent(address.split(/[?#]/, 1)[0] ?? "");
  } catch {
    return null;
  }
  if (path.includes("\0") || path.includes("\\")) return null;
  const base = resolve(folder);
  let file = resolve(base, `.${path.startsWith("/") ? path : `/${path}`}`);
  if (file !== base && !file.startsWith(base + sep)) return null;
  const found = statSync(file, { throwIfNoEntry: false });
  if (found?.isDirectory()) file = join(file, "index.html");
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : null;
}

/**
 * Serves a folder to this machine only, on the first free port from the one asked for.
 * @param {string} folder
 * @param {number} firstPort 0 takes any free one
 * @returns {Promise<{ port: number, close: () => void }>}
 * @throws Error if 50 ports in a row are taken
 */
export async function serve(folder, firstPort) {
  const lastPort = firstPort === 0 ? 0 : Math.min(65_535, firstPort + 49);
  for (let port = firstPort; port <= lastPort; port++) {
    const four = await listen(folder, port, "127.0.0.1");
    if (four === "taken") continue;
    const bound = portOf(four);
    // A browser may read "localhost" as ::1 first; somebody else's page there would be shown instead of ours.
    const six = await listen(folder, bound, "::1");
    if (six === "taken") {
      if (four !== "none") four.close();
      continue;
    }
    return {
      port: bound,
      close: () => {
        for (const server of [four, six]) {
          if (server === "none") continue;
          server.close();
          server.closeAllConnections();
        }
      },
    };
  }
  throw new Error(`Ports ${firstPort} to ${lastPort} are all taken. Set PORT to a free one.`);
}

/** @param {import("node:http").Server | "none"} server */
function portOf(server) {
  const address = server === "none" ? null : server.address();
  if (address === null || typeof address === "string") throw new Error("The server has no port.");
  return address.port;
}

/**
 * @param {string} folder
 * @param {number} port
 * @param {string} host
 * @returns {Promise<import("node:http").Server | "taken" | "none">} "none" where the machine has no such address
 */
function listen(folder, port, host) {
  const server = createServer((request, response) => {
    if (request.method !== "GET" && request.method !== "HEAD") {
      response.writeHead(405, { allow: "GET, HEAD" }).end();
      return;
    }
    const file = fileFor(folder, request.url ?? "/");
    if (file === null) {
      response
        .writeHead(404, { "content-type": "text/plain; charset=utf-8" })
        .end("There is no such file.\n");
      return;
    }
    response.writeHead(200, {
      "content-type": TYPES[extname(file).toLowerCase()] ?? "application/octet-stream",
      "content-length": statSync(file).size,
      "cache-control": "no-cache",
      "x-content-type-options": "nosniff",
    });
    if (request.method === "HEAD") response.end();
    else
      createReadStream(file)
        .on("error", () => response.destroy())
        .pipe(response);
  });
  return new Promise((done, fail) => {
    server.once("error", (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === "EADDRINUSE" || error.code === "EACCES") done("taken");
      else if (host === "::1") done("none");
      else fail(error);
    });
    server.listen(port, host, () => done(server));
  });
}
