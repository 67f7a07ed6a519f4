import { buildShopCalendar } from "@lapline/engine";
import type { ShopAnswer, ShopAsked } from "./sharedShop";

/** The days of several boards off the page's own thread: of five boards they take seconds on a slow phone. */
self.addEventListener("message", ({ data }: MessageEvent<ShopAsked>) => {
  self.postMessage(buildShopCalendar(data.boards, data.stands) satisfies ShopAnswer);
});
