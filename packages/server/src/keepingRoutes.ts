import type { Shop } from "@lapline/store";
import { Hono } from "hono";
import { changedMeanwhile } from "./changedMeanwhile";
import { conditionOf, revisionNeeded } from "./conditionOf";
import { deviceOf } from "./deviceOf";
import { noSuch } from "./notFound";
import { putAway } from "./putAway";

/** What a keeper does with whole boards: put one away, bring it back, take an earlier version back. Nothing is erased by it. */
export function keepingRoutes({ boards }: Shop): Hono {
  const routes = new Hono();

  routes.delete("/:id", async (context) => {
    const id = context.req.param("id");
    const condition = conditionOf(context.req.raw.headers);
    if (condition === undefined || !("ifRevision" in condition)) return revisionNeeded(`The board ${id}`);
    const result = await boards.putAway({ id, ...condition, device: deviceOf(context) });
    if (result.kind === "no-board") return noSuch("board", id);
    if (result.kind === "put-away") return context.json({ id, putAwayAt: result.putAwayAt });
    return changedMeanwhile({ boards, condition, text: result.current.text, current: result.current });
  });

  routes.post("/:id/bring-back", async (context) => {
    const id = context.req.param("id");
    const board = await boards.bringBack({ id, device: deviceOf(context) });
    if (board === null) return noSuch("board", id);
    const { revision, version } = board;
    return context.json({ id, revision, version, added: [] }, 200, { etag: `"${revision}"` });
  });

  routes.post("/:id/versions/:version/take-back", async (context) => {
    const { id, version } = context.req.param();
    const condition = conditionOf(context.req.raw.headers);
    if (condition === undefined || !("ifRevision" in condition)) return revisionNeeded(`The board ${id}`);
    const earlier = /^[1-9]\d{0,8}$/.test(version) ? await boards.readVersion(id, Number(version)) : null;
    if (earlier === null) return noSuch("version", `${id}, ${version}`);
    const { text } = earlier;
    const result = await boards.write({ id, text, condition, device: deviceOf(context) });
    if (result.kind === "put-away") return putAway(result.putAwayAt);
    if (result.kind === "changed-meanwhile") return changedMeanwhile({ boards, condition, text, ...result });
    const { board, added } = result;
    const answer = { id, revision: board.revision, version: board.version, added };
    return context.json(answer, 200, { etag: `"${board.revision}"` });
  });

  return routes;
}

/** The boards that are out of the Shed. */
export function putAwayRoutes({ boards }: Shop): Hono {
  const routes = new Hono();
  routes.get("/", async (context) => {
    const listed = (await boards.listPutAway()).map(({ summary, putAwayAt }) => ({
      ...(JSON.parse(summary) as object),
      putAwayAt,
    }));
    return context.json({ boards: listed });
  });
  return routes;
}
