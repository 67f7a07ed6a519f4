import type { Shop } from "@lapline/store";
import { Hono } from "hono";
import { streamSSE } from "hono/streaming";
import { openChangeFeed } from "./changeFeed";

/** Ends a wait now and then, so that a connection that died is noticed and a change told elsewhere is not missed. */
const LOOK_AGAIN_MS = 15_000;

/**
 * What is kept, as server-sent events while it happens (WHATWG HTML, 9.2). Each has its number as id: a page that was away sends
 * it as Last-Event-ID and gets what it missed, or `reload` where that is too long ago.
 */
export function changeRoutes(shop: Shop): Hono {
  const feed = openChangeFeed(shop);
  const routes = new Hono();
  routes.get("/", (context) => {
    const asked = context.req.header("last-event-id");
    const known = asked !== undefined && /^\d{1,9}$/.test(asked) ? Number(asked) : null;
    return streamSSE(context, async (stream) => {
      let wake: () => void = () => undefined;
      let isNews = false;
      const news = () => {
        isNews = true;
        wake();
      };
      const unwatch = feed.watch(news);
      stream.onAbort(news);
      try {
        let seq = known ?? (await shop.changes.last());
        await stream.writeSSE({ event: "open", id: String(seq), data: "" });
        // What was kept before it was watched for.
        feed.look();
        while (!stream.aborted && !stream.closed) {
          isNews = false;
          const more = await feed.after(seq);
          if (more !== null) {
            await stream.write(more.text);
            seq = more.seq;
            continue;
          }
          if (isNews) continue;
          await new Promise<void>((resolve) => {
            const timer = setTimeout(resolve, LOOK_AGAIN_MS);
            timer.unref();
            wake = () => {
              clearTimeout(timer);
              resolve();
            };
          });
          if (isNews) continue;
          feed.look();
          await stream.write(": still here\n\n");
        }
      } finally {
        unwatch();
      }
    });
  });
  return routes;
}
