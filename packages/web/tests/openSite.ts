import type { Page } from "playwright-core";
import { launchBrowser } from "../../../tests/browser/launchBrowser";
import { type RunningApp, startApp } from "../../../tests/browser/startApp";

export interface Reader {
  readonly viewport?: { width: number; height: number };
  readonly units?: "inch" | "mm";
  readonly language?: "en" | "de";
  readonly light?: "paper" | "night" | "sun";
  /** What the browser's clock says when the page opens, as local time; from there it runs on. */
  readonly clock?: string;
  /** A finger instead of a mouse. */
  readonly isTouched?: boolean;
  /** Whether what is typed is kept for the next page; if left out it is. */
  readonly keeps?: boolean;
  /** Whether the app's service worker runs; it does if left out and the page keeps what is typed. */
  readonly hasWorker?: boolean;
}

export interface Site {
  readonly address: string;
  readonly app: RunningApp;
  open(path: string, reader?: Reader): Promise<Page>;
  /** A board's page, once it is there. */
  openBoard(id: string, reader?: Reader): Promise<Page>;
  close(): Promise<void>;
}

/** The real server with the demo boards, and a browser to look at it with; each page in a context of its own. */
export async function openSite(): Promise<Site> {
  const [app, browser] = await Promise.all([startApp(), launchBrowser()]);
  const open = async (
    path: string,
    {
      viewport,
      units = "inch",
      light = "paper",
      language = "en",
      keeps = true,
      hasWorker = keeps,
      clock,
      isTouched = false,
    }: Reader = {},
  ) => {
    const context = await browser.newContext({
      viewport: viewport ?? { width: 1440, height: 900 },
      reducedMotion: "reduce",
      hasTouch: isTouched,
      isMobile: isTouched,
      // What a page asks in the moment in which a worker takes it over goes past `page.route`.
      serviceWorkers: hasWorker ? "allow" : "block",
    });
    const page = await context.newPage();
    if (clock !== undefined) await page.clock.install({ time: new Date(clock) });
    await page.addInitScript(
      ([keptUnits, keptLight, keptLanguage]) => {
        window.localStorage.setItem("lapline.units", keptUnits ?? "");
        window.localStorage.setItem("lapline.light", keptLight ?? "");
        window.localStorage.setItem("lapline.language", keptLanguage ?? "");
      },
      [units, light, language],
    );
    if (!keeps)
      await page.route("**/api/boards/*", (route) =>
        route.request().method() === "PUT" ? route.abort() : route.continue(),
      );
    await page.goto(new URL(path, app.address).href);
    return page;
  };
  return {
    address: app.address,
    app,
    open,
    async openBoard(id, reader) {
      const page = await open(`board/${id}`, reader);
      await page.locator("#measure").waitFor();
      return page;
    },
    async close() {
      await browser.close();
      await app.close();
    },
  };
}
