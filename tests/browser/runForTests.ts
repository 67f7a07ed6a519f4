import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { buildFirst } from "../buildFirst";
import { launchBrowser } from "./launchBrowser";
import { type RunningApp, startApp } from "./startApp";

interface Running {
  readonly app: RunningApp;
  readonly browser: Browser;
}

/** A service worker fetches the whole app into each new context: it runs only in a test that asks for it. */
function withoutWorkers(browser: Browser): Browser {
  const { newContext } = browser;
  browser.newContext = (options) => newContext.call(browser, { serviceWorkers: "block", ...options });
  return browser;
}

/** The built app on its real server, and a browser, from before a file's first test until after its last. */
export function runForTests(): Running {
  let running: Running | undefined;
  const started = (): Running => {
    if (running === undefined) throw new Error("the app runs only while tests do");
    return running;
  };
  beforeAll(async () => {
    buildFirst("web");
    const [app, browser] = await Promise.all([startApp(), launchBrowser()]);
    running = { app, browser: withoutWorkers(browser) };
  });
  afterAll(async () => {
    await started().browser.close();
    await started().app.close();
  });
  return {
    get app() {
      return started().app;
    },
    get browser() {
      return started().browser;
    },
  };
}
