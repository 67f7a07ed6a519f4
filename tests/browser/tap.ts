import type { Locator } from "playwright-core";

/**
 * Touches a button, and waits for the click: it comes a moment after the finger is gone, so that what is looked at or touched
 * right after would come before it.
 */
export async function tap(target: Locator): Promise<void> {
  const clicked = target
    .page()
    .evaluate(
      () => new Promise<void>((resolve) => window.addEventListener("click", () => resolve(), { once: true })),
    );
  await target.tap();
  await clicked;
}
