import { defineConfig } from "vite";

/** Few files that run on Node alone, so that the command starts without looking for packages; what is seldom needed stays apart. */
export default defineConfig({
  // The databases stay packages: one is a file for each machine, the other looks for optional parts of its own.
  ssr: { noExternal: true, external: ["libsql", "pg"] },
  build: {
    ssr: true,
    target: "node20",
    emptyOutDir: false,
    rollupOptions: {
      input: {
        main: "src/main.ts",
        nestWorker: "src/cut/nestWorker.ts",
        sheetWorker: "../server/src/sheets/sheetWorker.ts",
      },
      output: { entryFileNames: "[name].js", chunkFileNames: "[name].js" },
    },
  },
});
