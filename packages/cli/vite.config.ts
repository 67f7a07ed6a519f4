import { defineConfig } from "vite";

/** Few files that run on Node alone, so that the command starts without looking for packages; what is seldom needed stays apart. */
export default defineConfig({
  ssr: { noExternal: true },
  build: {
    ssr: "src/main.ts",
    target: "node20",
    emptyOutDir: false,
    rollupOptions: { output: { chunkFileNames: "[name].js" } },
  },
});
