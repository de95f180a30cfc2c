import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const leftOut = here("./src/tasks/left-out.mjs");

export default defineConfig({
  root: here("./src/editor"),
  // Relative addresses: the built folder works from any path of any web host.
  base: "./",
  publicDir: here("./src/editor/public"),
  plugins: [
    react(),
    VitePWA({
      registerType: "prompt",
      injectRegister: null,
      manifest: {
        name: "Pigtail",
        short_name: "Pigtail",
        description: "Draw, check and document one-off vehicle wiring harnesses.",
        display: "standalone",
        start_url: "./",
        scope: "./",
        background_color: "#fbf8f1",
        theme_color: "#fbf8f1",
        icons: [{ src: "icon.svg", sizes: "any", type: "image/svg+xml" }],
      },
      workbox: {
        globPatterns: ["**/*.{js,css,html,svg,ttf,woff2,json}"],
        // ELK's worker is over the default limit, and without it nothing can be arranged offline.
        maximumFileSizeToCacheInBytes: 4_000_000,
      },
    }),
  ],
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
