import { readBoardFile } from "@lapline/contract";
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
    const board = await boards.read(boardId);
    if (board === null) return noSuch("board", boardId);
    const earlier = await journal.list(boardId);
    const read = readEntry(text, board.text, earlier);
    if (read instanceof Response) return read;
    const result = await journal.add({ boardId, ...read, device: deviceOf(context) });
    if (result.kind === "no-board") return noSuch("board", boardId);
    if (result.kind === "kept") return context.json(shown(result.entry), result.isNew ? 201 : 200);
    const detail = `Another entry is kept under the id ${JSON.stringify(read.id)}. Entries are not changed: send a new one that corrects it.`;
    return problem({ status: 409, title: "Another entry has this id", detail, kept: shown(result.entry) });
  });

  return routes;
}

function shown({ text, ...rest }: JournalEntry) {
  return { ...rest, entry: JSON.parse(text) as unknown };
}

/** Held against the board as the contract holds its record: kind, quantities, and that what it corrects is there. */
function readEntry(
  text: string,
  boardText: string,
  earlier: readonly JournalEntry[],
): Response | { readonly id: string; readonly text: string } {
  const entry = parse(text);
  const board = parse(boardText);
  if (!isObject(entry) || typeof entry.id !== "string" || !isObject(board)) {
    const message = 'write one entry, such as { "id": "…", "kind": "done", "step": "laminate-bottom" }';
    return notABoard([{ path: "(entry)", read: "no entry with an id", message }]);
  }
  const before = earlier.filter(({ id }) => id !== entry.id).map((each) => JSON.parse(each.text) as unknown);
  const recorded = Array.isArray(board.record) ? (board.record as unknown[]) : [];
  const others = recorded.filter((each) => !(isObject(each) && each.id === entry.id));
  const read = readBoardFile(JSON.stringify({ ...board, record: [...others, ...before, entry] }));
  return read.ok ? { id: entry.id, text: JSON.stringify(entry) } : notABoard(read.problems);
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
