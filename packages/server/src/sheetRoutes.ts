import { type SheetAsked, sheetAskedSchema } from "@lapline/contract";
import type { Shop } from "@lapline/store";
import { type Context, Hono } from "hono";
import { deviceOf } from "./deviceOf";
import { noSuch } from "./notFound";
import { problem } from "./problem";
import { putAway } from "./putAway";
import { readJsonBody } from "./readJsonBody";
import { sentAsFile } from "./sentAsFile";
import { LONGEST_SHEET_MS, type NoSheetNow, openSheetThread } from "./sheets/sheetInThread";

/** Sheets as they were handed out: the plan and the PDF of one version of a board, frozen. */
export function sheetRoutes({ boards, sheets }: Shop, now: () => Date, make = openSheetThread()): Hono {
  const routes = new Hono();

  routes.get("/:id/sheets", async (context) => {
    const id = context.req.param("id");
    if ((await boards.read(id)) === null) return noSuch("board", id);
    return context.json({ sheets: await sheets.list(id) });
  });

  routes.post("/:id/sheets", async (context) => {
    const id = context.req.param("id");
    const asked = await readAsked(context);
    if (asked instanceof Response) return asked;
    const newest = await boards.read(id);
    if (newest === null) return noSuch("board", id);
    if (newest.putAwayAt !== null) return putAway(newest.putAwayAt);
    const board = asked.version === undefined ? newest : await boards.readVersion(id, asked.version);
    if (board === null) return noSuch("version", `${id}, ${asked.version}`);
    const made = await make({ ...sheetOf(asked, now()), text: board.text });
    if (made.kind === "busy" || made.kind === "too-long") return notNow(made);
    if (made.kind === "not-made") return problem({ status: 422, title: "No Sheet", detail: made.why });
    const { plan, pdf } = made;
    const write = { boardId: id, boardVersion: board.version, plan, pdf, device: deviceOf(context) };
    const result = await sheets.issue(write);
    if (result.kind === "no-board") return noSuch("board", id);
    const location = `/api/boards/${id}/sheets/${result.sheet.id}`;
    return context.json(result.sheet, result.isNew ? 201 : 200, { location });
  });

  routes.get("/:id/sheets/:sheet", async (context) => {
    const { id, sheet } = context.req.param();
    const found = await sheets.read(id, sheet);
    return found === null ? noSuch("Sheet", `${id}, ${sheet}`) : context.json(found);
  });

  for (const [file, type, ending] of FILES)
    routes.get(`/:id/sheets/:sheet/${file}`, async (context) => {
      const id = context.req.param("id") ?? "";
      const sheet = context.req.param("sheet") ?? "";
      const issued = await sheets.read(id, sheet);
      if (issued === null) return noSuch("Sheet", `${id}, ${sheet}`);
      const etag = file === "pdf" ? issued.pdfHash : issued.planHash;
      const sent = { etag, type, name: `${id}-sheet-${sheet}.${ending}`, shows: "inline" } as const;
      return sentAsFile(context, sent, () => sheets.open(issued, file));
    });

  return routes;
}

function notNow({ kind }: NoSheetNow): Response {
  const detail =
    kind === "busy"
      ? "Many Sheets are being made just now. Ask again in a moment."
      : `This Sheet was not done after ${LONGEST_SHEET_MS / 1000} s and was given up. Others can be made; ask for this one again when the machine has less to do.`;
  const title = kind === "busy" ? "Busy" : "Took too long";
  return problem({ status: 503, title, detail, reason: kind }, { "retry-after": "5" });
}

const FILES = [
  ["pdf", "application/pdf", "pdf"],
  ["plan", "application/json", "json"],
] as const;

async function readAsked(context: Context): Promise<SheetAsked | Response> {
  const text = await readJsonBody(context);
  if (text instanceof Response) return text;
  const read = sheetAskedSchema.safeParse(parse(text));
  if (read.success) return read.data;
  const detail = read.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`).join("\n");
  return problem({ status: 422, title: "Not a way to make a Sheet", detail });
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function sheetOf({ paper = "a4", units = "mm", language = "en" }: SheetAsked, instant: Date) {
  const two = (number: number) => String(number).padStart(2, "0");
  const date = `${instant.getFullYear()}-${two(instant.getMonth() + 1)}-${two(instant.getDate())}`;
  return { paper, reader: { units, language }, madeOn: { instant, date } };
}
