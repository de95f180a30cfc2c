import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The two pages whose frames are compared, built as the editor is. */
export default defineConfig({
  root: here("./"),
  base: "./",
  plugins: [react()],
  worker: { format: "es" },
  logLevel: "warn",
  server: { host: "127.0.0.1", hmr: false, fs: { allow: [here("../../../")] } },
  build: {
    target: "es2022",
    emptyOutDir: true,
    chunkSizeWarningLimit: 2000,
    rollupOptions: { input: [here("./own.html"), here("./bare.html")] },
  },
});
