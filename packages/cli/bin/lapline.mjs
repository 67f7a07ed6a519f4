#!/usr/bin/env node
// Starts the command: installs and builds first where that is still to be done. No dependency, so that it runs on a bare clone.
import { ensureBuilt } from "../../../scripts/build.mjs";

// `npm run lapline` moves to the root of the workspace; file names count from where the person stands.
if (process.env.npm_lifecycle_event === "lapline" && process.env.INIT_CWD)
  process.chdir(process.env.INIT_CWD);

ensureBuilt(process.argv[2] === "serve" ? ["cli", "web"] : ["cli"]);
await import("../dist/main.js");
