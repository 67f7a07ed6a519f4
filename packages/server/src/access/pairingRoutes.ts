import { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { problem } from "../problem";
import { type Access, askerOf, isRole, offerOf } from "./Access";
import { readSmallJson, SMALL } from "./readSmallJson";

/** The code that lets the next device in: seen and made at this machine only, so that no device that was lost lets in others. */
export function pairingRoutes(access: Access): Hono {
  const { desk, sharing } = access;
  const routes = new Hono();

  routes.use(async (context, next) => {
    context.header("cache-control", "no-store");
    if (askerOf(context).isHere) return next();
    const detail = "Codes are made at the shop's computer itself.";
    return problem({ status: 403, title: "Only at the shop's computer", detail });
  });

  routes.get("/", (context) => {
    const code = desk.look();
    return context.json({
      shared: sharing !== null,
      secure: sharing?.isSecure ?? false,
      addresses: sharing?.addresses() ?? [],
      offer: code && offerOf(access, code),
    });
  });

  routes.post("/", bodyLimit(SMALL), async (context) => {
    if (sharing === null) {
      const detail = "This shop is not shared. Start it with lapline serve --share.";
      return problem({ status: 409, title: "Not shared", detail });
    }
    const asked = await readSmallJson(context);
    if (asked instanceof Response) return asked;
    if (!isRole(asked.role)) {
      const detail = 'The role is "bench" or "keeper".';
      return problem({ status: 422, title: "No such role", detail });
    }
    return context.json(offerOf(access, desk.make(asked.role)), 201);
  });

  return routes;
}
