import { isShelf, readShelfItem } from "@lapline/contract";
import { isBoardId, type ShelfItem, type Shop, TAKEN_OFF, type WriteCondition } from "@lapline/store";
import { type Context, Hono } from "hono";
import { compareKept } from "./changedMeanwhile";
import { conditionOf, revisionNeeded } from "./conditionOf";
import { deviceOf } from "./deviceOf";
import { noSuch, notARecord } from "./notFound";
import { problem } from "./problem";
import { readJsonBody } from "./readJsonBody";
import { sendFile } from "./sendFile";

/** What the shop has for all its boards: materials, prices, rolls and house sets, every saved version of each. */
export function shelfRoutes({ shelf }: Shop): Hono {
  const routes = new Hono();
  const nameOf = (context: Context) => `${context.req.param("shelf")}/${context.req.param("id")}`;

  routes.get("/", async (context) => context.json({ records: (await shelf.list()).map(shown) }));

  routes.get("/:shelf/:id", async (context) => {
    const { shelf: on, id } = context.req.param();
    const item = await shelf.read(on, id);
    return item === null || item.text === TAKEN_OFF
      ? noSuch("record", nameOf(context))
      : sendFile(context, item);
  });

  routes.get("/:shelf/:id/versions", async (context) => {
    const { shelf: on, id } = context.req.param();
    const versions = (await shelf.listVersions(on, id)).map(shown);
    return versions.length === 0 ? noSuch("record", nameOf(context)) : context.json({ versions });
  });

  routes.put("/:shelf/:id", async (context) => {
    const { shelf: on, id } = context.req.param();
    if (!isShelf(on)) return noSuch("shelf", on);
    if (!isBoardId(id) || id === "constructor") {
      const detail =
        "Use lower-case letters, digits and single hyphens, at most 64 characters: my-polyester.";
      return problem({ status: 400, title: "Not a name for a record", detail });
    }
    const text = await readJsonBody(context);
    if (text instanceof Response) return text;
    const problems = readShelfItem(on, text);
    return problems.length > 0 ? notARecord(problems) : keep(context, on, text);
  });

  routes.delete("/:shelf/:id", async (context) => {
    const item = await shelf.read(context.req.param("shelf"), context.req.param("id"));
    if (item === null || item.text === TAKEN_OFF) return noSuch("record", nameOf(context));
    return keep(context, item.shelf, TAKEN_OFF);
  });

  async function keep(context: Context, on: string, text: string): Promise<Response> {
    const id = context.req.param("id") ?? "";
    const given = conditionOf(context.req.raw.headers);
    const condition: WriteCondition = given ?? { ifAbsent: true };
    const result = await shelf.write({ shelf: on, id, text, condition, device: deviceOf(context) });
    if (result.kind === "changed-meanwhile")
      return given === undefined
        ? revisionNeeded(`The record ${on}/${id}`)
        : compareKept({ what: "record", text, ...result, before: await before(on, id, given) });
    if (text === TAKEN_OFF) return context.body(null, 204);
    const { revision, version } = result.item;
    return context.json({ shelf: on, id, revision, version }, result.created ? 201 : 200, {
      etag: `"${revision}"`,
    });
  }

  async function before(on: string, id: string, condition: WriteCondition): Promise<string | null> {
    if (!("ifRevision" in condition)) return null;
    const versions = await shelf.listVersions(on, id);
    return versions.find(({ revision }) => revision === condition.ifRevision)?.text ?? null;
  }

  return routes;
}

function shown({ text, ...rest }: ShelfItem) {
  return { ...rest, record: JSON.parse(text) as unknown };
}
