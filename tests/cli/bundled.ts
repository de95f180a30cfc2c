import { rmSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "vite";
import type { TestProject } from "vitest/node";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

declare module "vitest" {
  interface ProvidedContext {
    readonly bundledCli: string;
  }
}

/**
 * Puts the command line into one script before its tests run: they start it over a hundred times, and to read it
 * as TypeScript takes several times as long as what it then does. Where each file stands stays what it was.
 */
export default async function bundleOnce(project: TestProject): Promise<() => void> {
  // Beside the packages it imports, and its own for each run: two runs at a time do not spoil each other's.
  const folder = here(`../../node_modules/.pigtail-cli/${process.pid}`);
  await build({
    configFile: false,
    logLevel: "error",
    plugins: [
      {
        name: "where-it-stood",
        transform: (code, id) =>
          code.includes("import.meta.url") && !id.includes("node_modules")
            ? code.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id).href))
            : null,
      },
    ],
    build: {
      ssr: here("../../src/cli/main.ts"),
      outDir: folder,
      emptyOutDir: true,
      minify: false,
      target: "node20",
      rolldownOptions: { output: { entryFileNames: "main.mjs", chunkFileNames: "[name]-[hash].mjs" } },
    },
  });
  project.provide("bundledCli", `${folder}/main.mjs`);
  return () => rmSync(folder, { recursive: true, force: true });
}
