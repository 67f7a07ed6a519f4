import { readBoardFile } from "@lapline/contract";
import { idsFromName, isBoardId, type Shop, type WriteCondition } from "@lapline/store";
import { type Context, Hono } from "hono";
import { changedMeanwhile } from "./changedMeanwhile";
import { deviceOf } from "./deviceOf";
import { keepList } from "./keepList";
import { noSuch, notABoard } from "./notFound";
import { problem } from "./problem";
import { readJsonBody } from "./readJsonBody";

/** The boards in the shop: the list, one board's file and its earlier versions, and keeping one. */
export function boardRoutes(shop: Shop): Hono {
  const { boards } = shop;
  const routes = new Hono();

  const list = keepList(shop);
  routes.get("/", async (context) => context.body(await list(), 200, { "content-type": "application/json" }));

  routes.get("/:id", async (context) => {
    const board = await boards.read(context.req.param("id"));
    return board === null ? noSuch("board", context.req.param("id")) : sendFile(context, board);
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
    const read = readBoardFile(text);
    if (!read.ok) return notABoard(read.problems);
    const ids = idsFromName(read.board.name);
    for (;;) {
      const write = {
        id: ids.next().value,
        text,
        condition: { ifAbsent: true },
        device: deviceOf(context),
      } as const;
      const result = await boards.write(write);
      if (result.kind === "changed-meanwhile") continue;
      const { id, revision } = result.board;
      return context.json({ id, revision }, 201, { etag: `"${revision}"`, location: `/api/boards/${id}` });
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
    const read = readBoardFile(text);
    if (!read.ok) return notABoard(read.problems);
    const condition = conditionOf(context.req.raw.headers);
    const result = await boards.write({
      id,
      text,
      condition: condition ?? { ifAbsent: true },
      device: deviceOf(context),
    });
    if (result.kind === "written") {
      const { revision } = result.board;
      return context.json({ id, revision }, result.created ? 201 : 200, { etag: `"${revision}"` });
    }
    return condition === undefined
      ? revisionNeeded(id)
      : changedMeanwhile({ boards, condition, text, ...result });
  });

  return routes;
}

interface SentFile {
  readonly id: string;
  readonly text: string;
  readonly revision: string;
}

function sendFile(context: Context, { id, text, revision }: SentFile): Response {
  const headers = {
    etag: `"${revision}"`,
    "cache-control": "no-cache",
    // A page reads it all the same; a link to it downloads it under this name.
    "content-disposition": `attachment; filename="${id}.json"`,
  };
  if (context.req.header("if-none-match") === headers.etag)
    return new Response(null, { status: 304, headers });
  return new Response(text, { headers: { ...headers, "content-type": "application/json" } });
}

function conditionOf(headers: Headers): WriteCondition | undefined {
  if (headers.get("if-none-match") === "*") return { ifAbsent: true };
  const match = headers.get("if-match");
  return match === null ? undefined : { ifRevision: match.replace(/^"|"$/g, "") };
}

function revisionNeeded(id: string): Response {
  const detail = `The board ${id} is there already. Read it, and send its ETag as If-Match with the change, so that no other change is lost.`;
  return problem({ status: 428, title: "Say which version was changed", detail });
}
