import type { Context } from "hono";
import { problem } from "../problem";

/** For requests of a few words. */
export const SMALL = {
  maxSize: 2000,
  onError: () => problem({ status: 413, title: "Too large", detail: "This call takes a few words." }),
};

/** The fields of a body that is one JSON object, or the answer that says why it was not taken. */
export async function readSmallJson(context: Context): Promise<Readonly<Record<string, unknown>> | Response> {
  if (!/^application\/json\s*(?:;|$)/i.test(context.req.header("content-type") ?? "")) {
    const detail = "Send JSON with the header content-type: application/json.";
    return problem({ status: 415, title: "Not JSON", detail });
  }
  const value: unknown = await context.req.json().catch(() => null);
  if (typeof value === "object" && value !== null && !Array.isArray(value))
    return value as Readonly<Record<string, unknown>>;
  return problem({ status: 400, title: "Not JSON", detail: "Send one JSON object." });
}
