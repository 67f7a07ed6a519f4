import { problemOf } from "@lapline/contract";
import { say } from "@lapline/engine";
import type { JournalEntry, Shop } from "@lapline/store";
import { Hono } from "hono";
import { deviceOf } from "./deviceOf";
import { noSuch, notABoard } from "./notFound";
import { problem } from "./problem";
import { readJsonBody } from "./readJsonBody";

/** What happened at the bench: entries in the form of the board file's record, each under an id that the device made. */
export function journalRoutes({ boards, journal }: Shop): Hono {
  const routes = new Hono();

  routes.get("/:id/journal", async (context) => {
    const id = context.req.param("id");
    if ((await boards.read(id)) === null) return noSuch("board", id);
    return context.json({ entries: (await journal.list(id)).map(shown) });
  });

  routes.post("/:id/journal", async (context) => {
    const boardId = context.req.param("id");
    const text = await readJsonBody(context);
    if (text instanceof Response) return text;
    const read = readEntry(text);
    if (read === null) {
      const need = say`write one entry, such as { "id": "…", "kind": "done", "step": "laminate-bottom" }`;
      return notABoard([problemOf("(entry)", "no entry with an id", need)]);
    }
    const result = await journal.add({ boardId, ...read, device: deviceOf(context) });
    if (result.kind === "no-board") return noSuch("board", boardId);
    if (result.kind === "refused") return notABoard(result.problems);
    if (result.kind === "kept") return context.json(shown(result.entry), result.isNew ? 201 : 200);
    const detail = `Another entry is kept under the id ${JSON.stringify(read.id)}. Entries are not changed: send a new one that corrects it.`;
    return problem({
      status: 409,
      title: "Another entry has this id",
      detail,
      kept: { entry: result.entry },
    });
  });

  return routes;
}

function shown({ text, ...rest }: JournalEntry) {
  return { ...rest, entry: JSON.parse(text) as unknown };
}

function readEntry(text: string): { readonly id: string; readonly text: string } | null {
  try {
    const entry = JSON.parse(text) as unknown;
    const id = typeof entry === "object" && entry !== null && "id" in entry ? entry.id : null;
    return typeof id === "string" && id.length <= 64 && !Array.isArray(entry)
      ? { id, text: JSON.stringify(entry) }
      : null;
  } catch {
    return null;
  }
}
