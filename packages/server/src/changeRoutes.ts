import type { Change, Shop } from "@lapline/store";
import { Hono } from "hono";
import { streamSSE } from "hono/streaming";

/** Ends a wait now and then, so that a connection that died is noticed and a change told elsewhere is not missed. */
const LOOK_AGAIN_MS = 15_000;

/**
 * What is kept, as server-sent events while it happens (WHATWG HTML, 9.2). Each has its number as id: a page that was away sends
 * it as Last-Event-ID and gets what it missed, or `reload` where that is too long ago.
 */
export function changeRoutes({ changes }: Shop): Hono {
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
      const unwatch = changes.watch(news);
      stream.onAbort(news);
      try {
        let seq = known ?? (await changes.last());
        await stream.writeSSE({ event: "open", id: String(seq), data: "" });
        while (!stream.aborted && !stream.closed) {
          isNews = false;
          for (const change of await changes.after(seq)) {
            const missed = change.seq > seq + 1;
            await stream.writeSSE(
              missed ? { event: "reload", id: String(change.seq), data: "" } : eventOf(change),
            );
            seq = change.seq;
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
          if (!isNews) await stream.write(": still here\n\n");
        }
      } finally {
        unwatch();
      }
    });
  });
  return routes;
}

function eventOf({ seq, ...change }: Change) {
  return { event: "change", id: String(seq), data: JSON.stringify(change) };
}
