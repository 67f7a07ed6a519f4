import type { Page } from "playwright-core";
import { launchBrowser } from "../../../tests/browser/launchBrowser";
import { startApp } from "../../../tests/browser/startApp";

export interface Reader {
  readonly viewport?: { width: number; height: number };
  readonly units?: "inch" | "mm";
  readonly language?: "en" | "de";
  readonly light?: "paper" | "night" | "sun";
  /** Whether what is typed is kept for the next page; if left out it is. */
  readonly keeps?: boolean;
}

export interface Site {
  readonly address: string;
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
    { viewport, units = "inch", light = "paper", language = "en", keeps = true }: Reader = {},
  ) => {
    const context = await browser.newContext({
      viewport: viewport ?? { width: 1440, height: 900 },
      reducedMotion: "reduce",
    });
    const page = await context.newPage();
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
