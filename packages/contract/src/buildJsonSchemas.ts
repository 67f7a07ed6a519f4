import { z } from "zod";
import { buildOpenApi } from "./http/buildOpenApi";
import { planSchema } from "./plan/planSchema";
import { boardFileSchema } from "./schema/boardFileSchema";

export interface JsonSchemaFile {
  readonly fileName: string;
  /** The file's text. */
  readonly text: string;
}

/**
 * The two documents of the contract as JSON Schema (draft 2020-12), for editors and other programs, and the HTTP interface as OpenAPI,
 * which holds its schemas in the same form. They hold the fields,
 * types and forms; ranges of quantities and what holds between fields only `readBoardFile` can tell.
 */
export function buildJsonSchemas(): readonly JsonSchemaFile[] {
  return [
    jsonSchemaFile("lapline-board-1", "A board file of Lapline, version 1", boardFileSchema),
    jsonSchemaFile("lapline-plan-1", "A build plan of Lapline, version 1", planSchema),
    { fileName: "lapline-http-1.openapi.json", text: `${JSON.stringify(buildOpenApi(), null, 2)}\n` },
  ];
}

function jsonSchemaFile(name: string, title: string, schema: z.core.$ZodType): JsonSchemaFile {
  // As input, so that the plan stays open to fields that a later engine adds.
  const { $schema, ...rest } = z.toJSONSchema(schema, { target: "draft-2020-12", io: "input" });
  const document = { $schema, $id: `urn:${name.replace("-", ":")}`, title, ...rest };
  return { fileName: `${name}.schema.json`, text: `${JSON.stringify(document, null, 2)}\n` };
}
