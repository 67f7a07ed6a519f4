import type { Context } from "hono";

/** The device that asks, as versions and entries name it. Only this machine can ask yet; pairing will set it. */
export function deviceOf(context: Context): string {
  const device: unknown = context.get("device");
  return typeof device === "string" ? device : "this machine";
}
