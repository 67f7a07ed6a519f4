/**
 * Adds up the JavaScript of each first load, compressed with gzip, from the built app's manifest, and fails where one is over its limit.
 * A first load is all script a page needs before it shows its plan, in English: its entry and what that imports, and the parts that are
 * always fetched for it. `npm run size`.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const dist = fileURLToPath(new URL("../packages/web/dist/", import.meta.url));

type Manifest = Readonly<Record<string, { readonly file: string; readonly imports?: readonly string[] }>>;

interface FirstLoad {
  readonly name: string;
  readonly kb: number;
  readonly limitKb: number;
}

/** Limits in kB (1000 bytes). `fetched` are the dynamic imports that the page cannot do without. */
const PAGES = [
  { name: "the Shed", fetched: ["src/shed/BoardRow.tsx"], limitKb: 170 },
  { name: "a board", fetched: ["src/board/BoardPage.tsx"], limitKb: 200 },
];

export function measureFirstLoads(): readonly FirstLoad[] {
  const manifest: Manifest = JSON.parse(readFileSync(join(dist, ".vite", "manifest.json"), "utf8"));
  return PAGES.map(({ name, fetched, limitKb }) => {
    const files = new Set<string>();
    for (const key of ["index.html", ...fetched]) addWithImports(manifest, key, files);
    const bytes = [...files].map((file) => gzipSync(readFileSync(join(dist, file)), { level: 9 }).length);
    return { name, kb: bytes.reduce((sum, each) => sum + each, 0) / 1000, limitKb };
  });
}

function addWithImports(manifest: Manifest, key: string, files: Set<string>): void {
  const chunk = manifest[key];
  if (chunk === undefined) throw new Error(`${key} is no longer a part of its own: name it anew in PAGES`);
  if (files.has(chunk.file)) return;
  files.add(chunk.file);
  for (const each of chunk.imports ?? []) addWithImports(manifest, each, files);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const { name, kb, limitKb } of measureFirstLoads()) {
    console.log(`${name}: ${kb.toFixed(1)} kB of script, at most ${limitKb} kB`);
    if (kb > limitKb) process.exitCode = 1;
  }
}
