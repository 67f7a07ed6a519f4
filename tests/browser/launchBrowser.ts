import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, chromium } from "playwright-core";

const FLAGS = [
  "--no-sandbox",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--use-gl=angle",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--ignore-gpu-blocklist",
  // The solid view has its emulated graphics processor; pages drawn by one too can leave it a minute behind.
  "--disable-gpu-rasterization",
];

/** Asks for the libraries that the unpacked browser needs on a bare machine. */
const WITH_LIBRARIES = { AWS_EXECUTION_ENV: "AWS_Lambda_nodejs20.x" };

/** How long a page may take for what a test waits for: a slow machine needs patience, not a second try. */
const PATIENCE_MS = 60_000;

const FONTS_FILE = "fonts.conf";

/**
 * Starts the browser that the tests look at pages with: the one named by LAPLINE_BROWSER, or else the one that comes with
 * the packages, which runs on Linux only.
 */
export async function launchBrowser(): Promise<Browser> {
  const browser = await startBrowser();
  browser.on("context", (context) => context.setDefaultTimeout(PATIENCE_MS));
  return browser;
}

async function startBrowser(): Promise<Browser> {
  const own = process.env.LAPLINE_BROWSER;
  const how = { args: FLAGS, timeout: PATIENCE_MS };
  if (own !== undefined) return chromium.launch({ ...how, executablePath: own });
  if (process.platform !== "linux") {
    throw new Error(
      "The browser tests need Chromium here: install it and name its program in LAPLINE_BROWSER.",
    );
  }
  const folder = unpackBrowser();
  const env = {
    ...process.env,
    FONTCONFIG_FILE: join(folder, FONTS_FILE),
    LD_LIBRARY_PATH: join(folder, "al2023", "lib"),
  };
  return chromium.launch({ ...how, executablePath: join(folder, "chromium"), env });
}

/** Unpacks the browser once for each of its versions; a run that comes meanwhile finds it whole or not at all. */
function unpackBrowser(): string {
  const require = createRequire(import.meta.url);
  const entry = require.resolve("@sparticuz/chromium");
  const { version } = require(join(entry, "..", "..", "..", "package.json")) as { version: string };
  const folder = join(tmpdir(), `lapline-chromium-${version}`);
  if (existsSync(folder)) return folder;
  const fresh = mkdtempSync(`${folder}-`);
  // The package unpacks into the folder for temporary files, so it runs on its own with a folder named for it.
  writeFileSync(join(fresh, FONTS_FILE), formatFontsFile(folder));
  const script = `import(${JSON.stringify(pathToFileURL(entry).href)}).then((m) => (m.default.default ?? m.default).executablePath())`;
  execFileSync(process.execPath, ["-e", script], {
    env: { ...process.env, ...WITH_LIBRARIES, TMPDIR: fresh },
  });
  try {
    renameSync(fresh, folder);
  } catch (error) {
    rmSync(fresh, { recursive: true });
    if (!existsSync(folder)) throw error;
  }
  return folder;
}

/** The machine's own fonts may be none; the browser brings one family along. */
function formatFontsFile(folder: string): string {
  return [
    '<?xml version="1.0"?>',
    '<!DOCTYPE fontconfig SYSTEM "fonts.dtd">',
    "<fontconfig>",
    `<dir>${join(folder, "fonts")}</dir>`,
    `<cachedir>${join(folder, "fonts-cache")}</cachedir>`,
    "</fontconfig>",
  ].join("\n");
}
