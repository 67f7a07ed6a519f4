import { type Shop, StoreUnavailableError, toldError } from "@lapline/store";
import { Hono, type MiddlewareHandler } from "hono";
import type { Access } from "./access/Access";
import { accessRoutes } from "./access/accessRoutes";
import { deviceRoutes } from "./access/deviceRoutes";
import { pairingRoutes } from "./access/pairingRoutes";
import { archiveRoutes } from "./archiveRoutes";
import { boardRoutes } from "./boardRoutes";
import { changeRoutes } from "./changeRoutes";
import { descriptionRoutes } from "./descriptionRoutes";
import { journalRoutes } from "./journalRoutes";
import { keepingRoutes, putAwayRoutes } from "./keepingRoutes";
import type { WebFile } from "./loadWebFiles";
import { photoRoutes } from "./photoRoutes";
import { planRoute } from "./planRoute";
import { problem } from "./problem";
import { secureHeaders } from "./secureHeaders";
import { sheetRoutes } from "./sheetRoutes";
import { shelfRoutes } from "./shelfRoutes";
import { storeUnavailable } from "./storeUnavailable";
import { webRoutes } from "./webRoutes";

export interface AppParts {
  readonly shop: Shop;
  readonly web: ReadonlyMap<string, WebFile>;
  readonly version: string;
  /** Say who a request is from and turn away what does not belong; what differs between this machine's door and the shared one. */
  readonly guards: readonly MiddlewareHandler[];
  readonly access: Access;
  /** Takes what went wrong inside, for the person at the terminal. */
  readonly report: (message: string) => void;
}

/** The HTTP interface under /api and the web app beside it. */
export function createApp({ shop, web, version, guards, access, report }: AppParts): Hono {
  const app = new Hono();
  app.use(secureHeaders);
  app.use(...guards);
  app.get("/api/health", (context) => context.json({ status: shop.state(), version }));
  app.route("/api/boards", boardRoutes(shop));
  app.route("/api/boards", keepingRoutes(shop));
  app.route("/api/boards", journalRoutes(shop));
  app.route("/api/boards", photoRoutes(shop));
  app.route("/api/boards", sheetRoutes(shop, access.now));
  app.route("/api/put-away", putAwayRoutes(shop));
  app.route("/api/shelf", shelfRoutes(shop));
  app.route("/api/archive", archiveRoutes(shop));
  app.route("/api/changes", changeRoutes(shop));
  app.route("/api/plan", planRoute());
  app.route("/api/access", accessRoutes(access));
  app.route("/api/devices", deviceRoutes(access));
  app.route("/api/pairing", pairingRoutes(access));
  app.route("/api", descriptionRoutes());
  app.all("/api/*", (context) => {
    const detail = `${context.req.method} ${context.req.path} is not part of this interface.`;
    return problem({ status: 404, title: "No such call", detail });
  });
  app.route("/", webRoutes(web));
  app.onError((thrown, context) => {
    const told = toldError(thrown);
    const error = told instanceof Error ? told : thrown;
    if (error instanceof StoreUnavailableError) {
      report(error.message);
      return storeUnavailable(error);
    }
    report(`${context.req.method} ${context.req.path}: ${error.message}`);
    const detail = "The request could not be met. The terminal where Lapline runs says more.";
    return problem({ status: 500, title: "Something failed inside", detail });
  });
  return app;
}
