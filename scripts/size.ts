/**
 * Adds up the JavaScript of each first load, compressed with gzip, from the built app's manifest, and fails where one is over its limit.
 * A first load is the page's script, in English: its entry and what that imports, and the parts that are always fetched for it. Beside the
 * page its planning thread has a script of its own; what the first drawing waits for is both, told as a second figure. `npm run size`.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const dist = fileURLToPath(new URL("../packages/web/dist/", import.meta.url));

type Manifest = Readonly<Record<string, { readonly file: string; readonly imports?: readonly string[] }>>;

interface FirstLoad {
  readonly name: string;
  readonly kb: number;
  readonly limitKb: number;
  /** The page and its planning thread. */
  readonly withPlanKb: number;
  readonly withPlanLimitKb: number;
}

/** Limits in kB (1000 bytes). `fetched` are the dynamic imports that the page cannot do without. */
const PAGES = [
  { name: "the Shed", fetched: ["src/shed/BoardRow.tsx"], limitKb: 34, withPlanLimitKb: 171 },
  { name: "a board", fetched: ["src/board/BoardPage.tsx"], limitKb: 63, withPlanLimitKb: 200 },
];

export function measureFirstLoads(): readonly FirstLoad[] {
  const manifest: Manifest = JSON.parse(readFileSync(join(dist, ".vite", "manifest.json"), "utf8"));
  const planKb = kbOf(planScript());
  return PAGES.map(({ name, fetched, ...limits }) => {
    const files = new Set<string>();
    for (const key of ["index.html", ...fetched]) addWithImports(manifest, key, files);
    const kb = [...files].map(kbOf).reduce((sum, each) => sum + each, 0);
    return { name, kb, withPlanKb: kb + planKb, ...limits };
  });
}

function kbOf(file: string): number {
  return gzipSync(readFileSync(join(dist, file)), { level: 9 }).length / 1000;
}

/** A worker's script does not stand in the manifest. */
function planScript(): string {
  const file = readdirSync(join(dist, "assets")).find((name) => /^planWorker-.*\.js$/.test(name));
  if (file === undefined) throw new Error("the planning thread has no script of its own any more");
  return join("assets", file);
}

function addWithImports(manifest: Manifest, key: string, files: Set<string>): void {
  const chunk = manifest[key];
  if (chunk === undefined) throw new Error(`${key} is no longer a part of its own: name it anew in PAGES`);
  if (files.has(chunk.file)) return;
  files.add(chunk.file);
  for (const each of chunk.imports ?? []) addWithImports(manifest, each, files);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const { name, kb, limitKb, withPlanKb, withPlanLimitKb } of measureFirstLoads()) {
    console.log(`${name}: ${kb.toFixed(1)} kB of script, at most ${limitKb} kB`);
    console.log(`  with its planning thread ${withPlanKb.toFixed(1)} kB, at most ${withPlanLimitKb} kB`);
    if (kb > limitKb || withPlanKb > withPlanLimitKb) process.exitCode = 1;
  }
}
