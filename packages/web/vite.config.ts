import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

/** Where `npm start` serves, for the development server to ask for boards. */
const SERVER = "http://127.0.0.1:5170";

/** Our own packages only declare things: what the page does not use is left out whole. */
const DECLARES_ONLY = /[\\/]packages[\\/](engine|contract|present|nest)[\\/]/;

export default defineConfig({
  plugins: [react()],
  build: {
    /** Scripts, styles and fonts stay files of their own: the server allows nothing inline. */
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 600,
    modulePreload: { polyfill: false },
    rolldownOptions: { treeshake: { moduleSideEffects: (id) => !DECLARES_ONLY.test(id) } },
  },
  worker: { format: "es" },
  server: { host: "127.0.0.1", proxy: { "/api": SERVER } },
});
