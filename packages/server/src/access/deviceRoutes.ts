import { type Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { deviceOf } from "../deviceOf";
import { noSuch } from "../notFound";
import { problem } from "../problem";
import { type Access, askerOf } from "./Access";
import { readDeviceName } from "./readDeviceName";
import { readSmallJson, SMALL } from "./readSmallJson";

/** The devices that are let in, for a keeper: list, rename, revoke. */
export function deviceRoutes({ devices }: Access): Hono {
  const routes = new Hono();

  routes.get("/", async (context) => {
    const own = askerOf(context).device?.id;
    const listed = (await devices.list()).map((device) => ({ ...device, own: device.id === own }));
    return context.json({ devices: listed }, 200, { "cache-control": "no-store" });
  });

  routes.patch("/:id", bodyLimit(SMALL), async (context) => {
    const asked = await readSmallJson(context);
    if (asked instanceof Response) return asked;
    const name = readDeviceName(asked.name);
    if (name === null) {
      const detail = "A device's name is one line of 1 to 40 characters.";
      return problem({ status: 422, title: "Not a name", detail });
    }
    const result = await devices.rename(idOf(context), name, deviceOf(context));
    if (result === "gone") return noSuch("device", idOf(context));
    if (result === "renamed") return context.body(null, 204);
    return problem({ status: 409, title: "Taken", detail: "Another device has this name, or had it." });
  });

  routes.delete("/:id", async (context) =>
    (await devices.revoke(idOf(context), deviceOf(context)))
      ? context.body(null, 204)
      : noSuch("device", idOf(context)),
  );

  return routes;
}

const idOf = (context: Context): string => context.req.param("id") ?? "";
