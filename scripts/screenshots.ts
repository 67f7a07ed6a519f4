import { copyFile, cp, mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import type { Browser, Page } from "playwright-core";
import { launchBrowser } from "../tests/browser/launchBrowser";
import { type RunningApp, startApp } from "../tests/browser/startApp";
import { ROOT } from "../tests/sourceFiles";
import { VIEWS, type View } from "./screenshots/views";

const SIZES = {
  phone: { width: 360, height: 740 },
  tablet: { width: 820, height: 1180 },
  desk: { width: 1440, height: 900 },
};
type Size = keyof typeof SIZES;
const LIGHTS = ["paper", "night", "sun"] as const;
type Light = (typeof LIGHTS)[number];

/** The bottom of the demo's quad is being glassed: its wet clock runs. Every clock stands still there. */
const NOW = new Date("2026-04-11T11:20:00Z");

const { values: asked } = parseArgs({
  options: {
    /** Where to, in place of docs/screenshots; what lies there stays. */
    out: { type: "string" },
    language: { type: "string", default: "en" },
    units: { type: "string", default: "inch" },
    /** Only views, sizes or lights of these names. */
    only: { type: "string", multiple: true, default: [] },
  },
});
const folder = asked.out ?? join(ROOT, "docs", "screenshots");

/** Lines stay sharp, and some two hundred pictures stay within a few megabytes. */
const WEBP_QUALITY = 82;

const isAsked = (name: string, among: readonly string[]): boolean => {
  const chosen = asked.only.filter((each) => among.includes(each));
  return chosen.length === 0 || chosen.includes(name);
};

async function openContext(browser: Browser, size: Size, light: Light): Promise<Page> {
  const context = await browser.newContext({
    viewport: SIZES[size],
    reducedMotion: "reduce",
    timezoneId: "UTC",
    locale: asked.language === "en" ? "en-GB" : asked.language,
    serviceWorkers: "block",
    hasTouch: size !== "desk",
    isMobile: size !== "desk",
  });
  const page = await context.newPage();
  await page.clock.setFixedTime(NOW);
  await page.addInitScript(
    (kept) => {
      for (const [key, value] of Object.entries(kept)) window.localStorage.setItem(`lapline.${key}`, value);
    },
    { light, language: asked.language, units: asked.units },
  );
  // What is typed for a picture is not kept for the next one.
  await page.route("**/api/boards/*", (route) =>
    route.request().method() === "PUT" ? route.abort() : route.continue(),
  );
  return page;
}

/** Nothing is on its way any more; the stream of changes stays open, so the network never falls idle. */
async function settle(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const isBusy = document.querySelector("[aria-busy=true]") !== null;
    const ends = [...document.querySelectorAll("#papers, .standing svg, .bench h1, .page h1")];
    return !isBusy && ends.length > 0;
  });
  await page.evaluate(async () => {
    await document.fonts.ready;
    for (let frames = 0; frames < 3; frames += 1) await new Promise(requestAnimationFrame);
  });
}

interface Taking {
  readonly app: RunningApp;
  /** Where pictures wait until all are taken. */
  readonly fresh: string;
  /** The size and the light, as they stand in the name. */
  readonly at: string;
}

async function take(page: Page, view: View, { app, fresh, at }: Taking): Promise<void> {
  const door = view.isOtherDevice === true ? app.sharedAddress : app.address;
  const address = new URL(view.path, door ?? undefined).href;
  if (page.url() !== address) await page.goto(address);
  await settle(page);
  const place = await view.show?.(page);
  await settle(page);
  if (place !== undefined)
    await page
      .locator(place)
      .first()
      .evaluate((each) => each.scrollIntoView({ behavior: "instant" }));
  await writeFile(join(fresh, `${view.name}-${at}.webp`), await pictureOf(page));
  // A drawer or a form that was opened is not in the next picture.
  if (view.show !== undefined && place === undefined) await page.goto("about:blank");
}

async function pictureOf(page: Page): Promise<Buffer> {
  const devtools = await page.context().newCDPSession(page);
  const { data } = await devtools.send("Page.captureScreenshot", { format: "webp", quality: WEBP_QUALITY });
  await devtools.detach();
  return Buffer.from(data, "base64");
}

/** Only once all were taken do they come into the place of those before: a run that breaks off leaves these as they were. */
async function putInPlace(fresh: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  const taken = await readdir(fresh);
  await Promise.all(taken.map((name) => copyFile(join(fresh, name), join(folder, name))));
  // Pictures of pages that are no more go.
  const isWhole = asked.out === undefined && asked.only.length === 0;
  const gone = isWhole ? (await readdir(folder)).filter((name) => !taken.includes(name)) : [];
  await Promise.all(gone.map((name) => rm(join(folder, name))));
}

/** Two devices, so that the list of them is not an empty one. */
async function pairDevices(app: RunningApp): Promise<void> {
  for (const [role, name] of [
    ["bench", "phone, glassing bay"],
    ["keeper", "laptop"],
  ] as const) {
    const answer = await fetch(new URL("api/access", app.sharedAddress ?? undefined), {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ code: app.makeCode(role), name }),
    });
    if (!answer.ok) throw new Error(await answer.text());
  }
}

const fresh = await mkdtemp(join(tmpdir(), "lapline-pictures-"));
// Of one build, whatever is built meanwhile.
const webFolder = await mkdtemp(join(tmpdir(), "lapline-built-"));
await cp(join(ROOT, "packages", "web", "dist"), webFolder, { recursive: true });
const app = await startApp({ now: () => NOW, webFolder, isShared: true });
const browser = await launchBrowser();
const views = VIEWS.filter(({ name }) =>
  isAsked(
    name,
    VIEWS.map((view) => view.name),
  ),
);
try {
  await pairDevices(app);
  for (const size of Object.keys(SIZES) as Size[]) {
    for (const light of LIGHTS) {
      if (!isAsked(size, Object.keys(SIZES)) || !isAsked(light, LIGHTS)) continue;
      const page = await openContext(browser, size, light);
      for (const view of views) await take(page, view, { app, fresh, at: `${size}-${light}` });
      await page.context().close();
      console.log(`${size}, ${light}`);
    }
  }
  await putInPlace(fresh);
} finally {
  await browser.close();
  await app.close();
  for (const each of [fresh, webFolder]) await rm(each, { recursive: true });
}
