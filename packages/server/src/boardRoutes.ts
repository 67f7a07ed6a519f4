import { idsFromName, isBoardId, readOnce, type Shop } from "@lapline/store";
import { Hono } from "hono";
import { changedMeanwhile } from "./changedMeanwhile";
import { conditionOf, revisionNeeded } from "./conditionOf";
import { deviceOf } from "./deviceOf";
import { keepList } from "./keepList";
import { noSuch, notABoard } from "./notFound";
import { problem } from "./problem";
import { putAway } from "./putAway";
import { readJsonBody } from "./readJsonBody";
import { sendFile } from "./sendFile";

/** The boards in the Shed: the list, one board's file and its earlier versions, and keeping one. */
export function boardRoutes(shop: Shop): Hono {
  const { boards } = shop;
  const routes = new Hono();

  const list = keepList(shop);
  routes.get("/", async (context) => context.body(await list(), 200, { "content-type": "application/json" }));

  routes.get("/:id", async (context) => {
    const board = await boards.read(context.req.param("id"));
    if (board === null) return noSuch("board", context.req.param("id"));
    return board.putAwayAt === null ? sendFile(context, board) : putAway(board.putAwayAt);
  });

  routes.get("/:id/versions", async (context) => {
    const versions = await boards.listVersions(context.req.param("id"));
    return versions.length === 0 ? noSuch("board", context.req.param("id")) : context.json({ versions });
  });

  routes.get("/:id/versions/:version", async (context) => {
    const { id, version } = context.req.param();
    const board = /^[1-9]\d{0,8}$/.test(version) ? await boards.readVersion(id, Number(version)) : null;
    return board === null ? noSuch("version", `${id}, ${version}`) : sendFile(context, board);
  });

  routes.post("/", async (context) => {
    const text = await readJsonBody(context);
    if (text instanceof Response) return text;
    const read = readOnce(text);
    if (!read.ok) return notABoard(read.problems);
    const ids = idsFromName(read.file.name);
    for (;;) {
      const write = {
        id: ids.next().value,
        text,
        condition: { ifAbsent: true },
        device: deviceOf(context),
      } as const;
      const result = await boards.write(write);
      if (result.kind !== "written") continue;
      const { id, revision, version } = result.board;
      const headers = { etag: `"${revision}"`, location: `/api/boards/${id}` };
      return context.json({ id, revision, version, added: result.added }, 201, headers);
    }
  });

  routes.put("/:id", async (context) => {
    const id = context.req.param("id");
    if (!isBoardId(id)) {
      const detail = "Use lower-case letters, digits and single hyphens, at most 64 characters: 5-10-quad.";
      return problem({ status: 400, title: "Not a name for a board", detail });
    }
    const text = await readJsonBody(context);
    if (text instanceof Response) return text;
    const read = readOnce(text);
    if (!read.ok) return notABoard(read.problems);
    const condition = conditionOf(context.req.raw.headers);
    const result = await boards.write({
      id,
      text,
      condition: condition ?? { ifAbsent: true },
      device: deviceOf(context),
    });
    if (result.kind === "put-away") return putAway(result.putAwayAt);
    if (result.kind === "written") {
      const { revision, version } = result.board;
      const answer = { id, revision, version, added: result.added };
      return context.json(answer, result.created ? 201 : 200, { etag: `"${revision}"` });
    }
    return condition === undefined
      ? revisionNeeded(`The board ${id}`)
      : changedMeanwhile({ boards, condition, text, ...result });
  });

  return routes;
}
