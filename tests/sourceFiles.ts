import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

/** The root of the workspace. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..");

export interface SourceFile {
  /** From the root, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

const LEFT_OUT = new Set(["node_modules", "dist", ".git", ".lapline"]);

/** The files under a folder of the workspace whose names match, what is installed or built left out. */
export function readSourceFiles(folder: string, name: RegExp): readonly SourceFile[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (LEFT_OUT.has(entry.name)) return [];
    if (entry.isDirectory()) return readSourceFiles(path, name);
    if (!entry.isFile() || !name.test(entry.name)) return [];
    return [{ path: path.split(sep).join("/"), text: readFileSync(join(ROOT, path), "utf8") }];
  });
}

const IMPORT =
  /(?:^|[\n;])\s*(?:import|export)\b[^;"']*?\bfrom\s*["']([^"']+)["']|(?:^|[\n;])\s*import\s*["']([^"']+)["']|\bimport\(\s*["']([^"']+)["']/g;

/** What a source file imports, types too: a package's name, or a path from the root without its ending. */
export function readImports({ path, text }: SourceFile): readonly string[] {
  return [...text.matchAll(IMPORT)].map(([, from, bare, dynamic]) => {
    const wanted = from ?? bare ?? dynamic ?? "";
    if (!wanted.startsWith(".")) return wanted;
    const target = join(ROOT, dirname(path), wanted).replace(/\.(?:ts|tsx)$/, "");
    return relative(ROOT, target).split(sep).join("/");
  });
}
