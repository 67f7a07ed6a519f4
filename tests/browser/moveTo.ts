import type { Page } from "playwright-core";

/** To another page of the app, or another place on it, without loading it anew; it is there when this is done, or on its way. */
export async function moveTo(page: Page, path: string): Promise<void> {
  await page.evaluate((to) => {
    window.history.pushState(null, "", to);
    window.dispatchEvent(new PopStateEvent("popstate"));
  }, `/${path}`);
}
