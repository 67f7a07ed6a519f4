import { defineConfig } from "vite";

/** One file that runs on Node alone, so that the command starts without looking for packages. */
export default defineConfig({
  ssr: { noExternal: true },
  build: {
    ssr: "src/main.ts",
    target: "node20",
    emptyOutDir: false,
    rollupOptions: { output: { codeSplitting: false } },
  },
});
