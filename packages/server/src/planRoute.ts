import { readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { Hono } from "hono";
import { notABoard } from "./notFound";
import { readJsonBody } from "./readJsonBody";

/** Turns a board file into its plan: the same that the command `lapline plan FILE --json` prints. */
export function planRoute(): Hono {
  const routes = new Hono();
  routes.post("/", async (context) => {
    const text = await readJsonBody(context);
    if (text instanceof Response) return text;
    const read = readBoardFile(text);
    return read.ok ? context.json(planBuild(read.board)) : notABoard(read.problems);
  });
  return routes;
}
