import { ArchiveRefusedError, type Shop } from "@lapline/store";
import { type Context, Hono } from "hono";
import { stream } from "hono/streaming";
import { bodyParts, refuseEncoded } from "./bodyParts";
import { problem } from "./problem";

const TYPE = "application/jsonl";

/** The whole shop in one file, out of one shop and into another that is empty. */
export function archiveRoutes(shop: Shop): Hono {
  const routes = new Hono();

  routes.get("/", (context) => {
    context.header("content-type", TYPE);
    context.header("cache-control", "no-store");
    context.header("content-disposition", 'attachment; filename="shop.jsonl"');
    // A copy that breaks off has no last line: whoever takes it in sees that.
    return stream(context, async (out) => {
      await shop.export(async (lines) => {
        if (out.aborted) throw new Error("whoever asked for the copy has left");
        await out.write(lines);
      });
    });
  });

  routes.post("/", async (context) => {
    const refused = refuseEncoded(context) ?? refuseType(context);
    if (refused !== null) return refused;
    try {
      await shop.import(bodyParts(context), { isSlow: true });
      return context.body(null, 204);
    } catch (error) {
      if (!(error instanceof ArchiveRefusedError)) throw error;
      const status = error.why === "not-empty" ? 409 : 422;
      const detail = `The copy was not taken in: ${error.message}. Nothing was changed.`;
      return problem({ status, title: "Not taken in", detail }, { connection: "close" });
    }
  });

  return routes;
}

function refuseType(context: Context): Response | null {
  const type = context.req.header("content-type")?.split(";")[0]?.trim().toLowerCase();
  if (type === TYPE) return null;
  const detail = `Send a copy of a shop with the header content-type: ${TYPE}.`;
  return problem({ status: 415, title: "Not a copy of a shop", detail }, { connection: "close" });
}
