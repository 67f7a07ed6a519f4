import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { defineConfig, type Plugin } from "vite";

/** Where `npm start` serves, for the development server to ask for boards. */
const SERVER = "http://127.0.0.1:5170";

/** The components are written for React's interface; what runs is the small library that offers it too (docs/decisions, 15). */
const SMALL_REACT = [
  { find: /^react-dom\/client$/, replacement: "preact/compat/client" },
  { find: /^react(-dom)?$/, replacement: "preact/compat" },
];

/** Our own packages only declare things: what the page does not use is left out whole. */
const DECLARES_ONLY = /[\\/]packages[\\/](engine|contract|present|nest)[\\/]/;

/** Counted in entries and parts that are fetched by themselves. What so many share comes as one file: fewer to fetch, and packed smaller together. */
const SHARED_BY_MANY = 6;

const LEAN = { treeshake: { moduleSideEffects: (id: string) => !DECLARES_ONLY.test(id) } };

/** Files of `public`, which the bundler does not name. */
const PUBLIC_FILES = ["/icon.svg"];

/** Writes /sw.js: the service worker with the names of all files of this build, which say its version. */
function serviceWorker(): Plugin {
  return {
    name: "lapline-service-worker",
    apply: "build",
    enforce: "post",
    generateBundle(_, bundle) {
      const source = readFileSync(new URL("serviceWorker.js", import.meta.url), "utf8");
      const built = Object.keys(bundle).filter((name) => name.startsWith("assets/"));
      const files = [...PUBLIC_FILES, ...built.map((name) => `/${name}`)].sort();
      const version = createHash("sha256").update(files.join("\n")).update(source).digest("hex").slice(0, 16);
      const head = `const VERSION = ${JSON.stringify(version)};\nconst FILES = ${JSON.stringify(files)};\n`;
      this.emitFile({ type: "asset", fileName: "sw.js", source: head + source });
    },
  };
}

export default defineConfig({
  plugins: [serviceWorker()],
  resolve: { alias: SMALL_REACT },
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  build: {
    /** Scripts, styles and fonts stay files of their own: the server allows nothing inline. */
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 600,
    modulePreload: { polyfill: false },
    /** For `npm run size`. */
    manifest: true,
    rolldownOptions: {
      ...LEAN,
      output: {
        codeSplitting: {
          groups: [{ name: "page", minShareCount: SHARED_BY_MANY, includeDependenciesRecursively: false }],
        },
      },
    },
  },
  worker: { format: "es", rolldownOptions: LEAN },
  server: { host: "127.0.0.1", proxy: { "/api": SERVER } },
});
