import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const leftOut = here("./src/tasks/left-out.mjs");

export default defineConfig({
  root: here("./src/editor"),
  // Relative addresses: the built folder works from any path of any web host.
  base: "./",
  publicDir: false,
  plugins: [react()],
  resolve: {
    alias: { html2canvas: leftOut, canvg: leftOut, dompurify: leftOut },
  },
  worker: { format: "es" },
  server: { host: "127.0.0.1", fs: { allow: [here("./")] } },
  preview: { host: "127.0.0.1" },
  build: {
    outDir: here("./dist"),
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 2048,
    chunkSizeWarningLimit: 1700,
  },
});
