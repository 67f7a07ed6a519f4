import { formatProblems, readBoardFile } from "@lapline/contract";
import { Hono } from "hono";
import type { BoardStore, WriteCondition } from "./BoardStore";
import { idsFromName } from "./idsFromName";
import { isBoardId } from "./isBoardId";
import { problem } from "./problem";
import { readJsonBody } from "./readJsonBody";
import { summariseBoard } from "./summariseBoard";

/** The boards in the shop: the list, one board's file, and keeping one. */
export function boardRoutes(store: BoardStore): Hono {
  const routes = new Hono();

  routes.get("/", async (context) => {
    const boards = await store.list();
    return context.json({ boards: boards.map(summariseBoard) });
  });

  routes.get("/:id", async (context) => {
    const id = context.req.param("id");
    const board = await store.read(id);
    if (board === null) {
      return problem({
        status: 404,
        title: "No such board",
        detail: `No board is kept as ${JSON.stringify(id)}.`,
      });
    }
    const headers = {
      etag: `"${board.revision}"`,
      "cache-control": "no-cache",
      // A page reads it all the same; a link to it downloads it under this name.
      "content-disposition": `attachment; filename="${board.id}.json"`,
    };
    if (context.req.header("if-none-match") === headers.etag)
      return new Response(null, { status: 304, headers });
    return new Response(board.text, { headers: { ...headers, "content-type": "application/json" } });
  });

  routes.post("/", async (context) => {
    const text = await readJsonBody(context);
    if (text instanceof Response) return text;
    const read = readBoardFile(text);
    if (!read.ok) return notABoard(read.problems);
    const { id, revision } = await keepUnderNewId(store, read.board.name, text);
    return context.json({ id, revision }, 201, { etag: `"${revision}"`, location: `/api/boards/${id}` });
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
    const result = await store.write(id, text, conditionOf(context.req.raw.headers));
    if (result.kind === "changed-meanwhile") {
      const detail =
        "The board was changed elsewhere since it was read. Read it again, then make the change.";
      return problem({ status: 412, title: "Changed meanwhile", detail });
    }
    const headers = { etag: `"${result.revision}"` };
    return context.json({ id, revision: result.revision }, result.created ? 201 : 200, headers);
  });

  return routes;
}

/** Under the first id of its name that no board has yet. */
async function keepUnderNewId(store: BoardStore, name: string, text: string) {
  const ids = idsFromName(name);
  for (;;) {
    const id = ids.next().value;
    const result = await store.write(id, text, { ifAbsent: true });
    if (result.kind === "written") return { id, revision: result.revision };
  }
}

/** The answer to a board file that cannot be read, each fault with its place. */
export function notABoard(problems: Parameters<typeof formatProblems>[0]): Response {
  const detail = formatProblems(problems);
  return problem({ status: 422, title: "Not a board file", detail, problems });
}

function conditionOf(headers: Headers): WriteCondition | undefined {
  if (headers.get("if-none-match") === "*") return { ifAbsent: true };
  const match = headers.get("if-match");
  return match === null ? undefined : { ifRevision: match.replace(/^"|"$/g, "") };
}
