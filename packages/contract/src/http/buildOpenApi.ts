import { z } from "zod";
import { planSchema } from "../plan/planSchema";
import { boardFileSchema } from "../schema/boardFileSchema";
import { clothSchema, foamSchema, woodSchema } from "../schema/clothSchema";
import { finsSchema } from "../schema/finsSchema";
import { resinSchema } from "../schema/materialsSchema";
import { recordEntrySchema } from "../schema/recordSchema";
import { priceSchema, rollSchema } from "../schema/shopSchema";
import type { HttpBody, HttpCall } from "./HttpCall";
import { httpCalls } from "./httpCalls";
import { httpParts } from "./httpParts";

type Json = Readonly<Record<string, unknown>>;

const PLACE = "#/components/schemas/";
const PROBLEM = "application/problem+json";

/** The HTTP interface as an OpenAPI document (version 3.1.1), made from the calls and the schemas that the program itself reads by. */
export function buildOpenApi(): Json {
  const paths: Record<string, Json> = {};
  for (const call of httpCalls) paths[call.path] = { ...paths[call.path], [call.method]: describe(call) };
  return {
    openapi: "3.1.1",
    info: {
      title: "Lapline",
      version: "1",
      description:
        "Boards, journals, photos, Sheets and shelves of one shop. Bodies are JSON in UTF-8 of at most 2 MB where nothing else is said.",
      license: { name: "MIT", identifier: "MIT" },
    },
    servers: [{ url: "/" }],
    paths,
    components: { schemas: schemas() },
  };
}

function describe({ method, path, says, takes, gives, revision }: HttpCall): Json {
  const given = Object.entries(gives).map(([status, body]) => [
    status,
    {
      description: status === "304" ? "It is the one that is there already" : says,
      ...(revision === undefined ? {} : { headers: { ETag: { schema: { type: "string" } } } }),
      ...(body === null ? {} : { content: contentOf(body) }),
    },
  ]);
  const parameters = [...namesIn(path).map(inPath), ...headersOf(revision)];
  return {
    operationId: operationId(method, path),
    summary: says,
    ...(parameters.length === 0 ? {} : { parameters }),
    ...(takes === undefined ? {} : { requestBody: { required: true, content: contentOf(takes) } }),
    responses: {
      ...Object.fromEntries(given),
      default: {
        description: "It could not be met, and nothing was kept",
        content: { [PROBLEM]: refTo("Problem") },
      },
    },
  };
}

const namesIn = (path: string) => [...path.matchAll(/\{(\w+)\}/g)].map(([, name = ""]) => name);
const inPath = (name: string) => ({ name, in: "path", required: true, schema: { type: "string" } });

function headersOf(revision: HttpCall["revision"]): Json[] {
  const header = (name: string) => ({ name, in: "header", required: false, schema: { type: "string" } });
  if (revision === "changes") return [header("If-Match"), header("If-None-Match")];
  return revision === "reads" ? [header("If-None-Match")] : [];
}

function contentOf(body: HttpBody): Json {
  return "json" in body
    ? { "application/json": refTo(body.json) }
    : Object.fromEntries(body.bytes.map((type) => [type, {}]));
}

const refTo = (part: string) => ({ schema: { $ref: PLACE + part } });

/** `getApiBoardsIdVersions`, each once. */
function operationId(method: string, path: string): string {
  const words = path.split(/\W+/).filter(Boolean);
  return method + words.map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join("");
}

function schemas(): Json {
  const shared = z.registry<{ id: string }>();
  for (const [id, schema] of Object.entries(httpParts)) shared.add(schema, { id });
  const made = z.toJSONSchema(shared, {
    target: "draft-2020-12",
    io: "input",
    uri: (id) => PLACE + id,
    override({ zodSchema, jsonSchema }) {
      const place = besideOf(zodSchema);
      if (place === undefined) return;
      for (const key of Object.keys(jsonSchema)) Reflect.deleteProperty(jsonSchema, key);
      jsonSchema.$ref = place;
    },
  });
  return Object.fromEntries(
    Object.entries(made.schemas).map(([id, { $schema: _, $id: __, ...schema }]) => [id, schema]),
  );
}

const BOARD = "lapline-board-1.schema.json";
const MATERIALS = `${BOARD}#/properties/materials/properties`;
/** What the two documents beside this one hold is not said again. */
const BESIDE: ReadonlyArray<readonly [z.core.$ZodType, string]> = [
  [boardFileSchema, BOARD],
  [planSchema, "lapline-plan-1.schema.json"],
  [recordEntrySchema, `${BOARD}#/properties/record/items`],
  [finsSchema, `${BOARD}#/properties/fins`],
  [resinSchema, `${MATERIALS}/resins/additionalProperties`],
  [clothSchema, `${MATERIALS}/cloths/additionalProperties`],
  [foamSchema, `${MATERIALS}/foams/additionalProperties`],
  [woodSchema, `${MATERIALS}/woods/additionalProperties`],
  [priceSchema, `${BOARD}#/properties/shop/properties/prices/additionalProperties`],
  [rollSchema, `${BOARD}#/properties/shop/properties/rolls/additionalProperties`],
];

const besideOf = (schema: unknown) => BESIDE.find(([each]) => each === schema)?.[1];
