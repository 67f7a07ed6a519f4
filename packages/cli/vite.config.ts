import { defineConfig } from "vite";

/** Few files that run on Node alone, so that the command starts without looking for packages; what is seldom needed stays apart. */
export default defineConfig({
  ssr: { noExternal: true },
  build: {
    ssr: true,
    target: "node20",
    emptyOutDir: false,
    rollupOptions: {
      input: { main: "src/main.ts", nestWorker: "src/cut/nestWorker.ts" },
      output: { entryFileNames: "[name].js", chunkFileNames: "[name].js" },
    },
  },
});
