import { buildJsonSchemas, buildOpenApi } from "@lapline/contract";
import { Hono } from "hono";

/** The interface's own description, and the schemas of the two documents beside it. */
export function descriptionRoutes(): Hono {
  const routes = new Hono();
  routes.get("/openapi.json", (context) => context.json(buildOpenApi()));
  for (const { fileName, text } of buildJsonSchemas())
    if (fileName.endsWith(".schema.json"))
      routes.get(`/${fileName}`, (context) =>
        context.body(text, 200, { "content-type": "application/json" }),
      );
  return routes;
}
