import type { Page } from "playwright-core";

/**
 * Waits until all that was typed and pressed is planned and kept by the shop's computer. A key is told as not saved in the very
 * picture in which it is seen, and nothing is sent before it is planned; what is drawn of the plan may still be on its way.
 */
export const saved = (page: Page): Promise<void> => page.locator(".saving-saved").waitFor();
