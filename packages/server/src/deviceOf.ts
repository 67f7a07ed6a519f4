import type { Context } from "hono";

/** Who asks, as versions and entries name it: the device that was let in, or else whoever sits at this machine. */
export function deviceOf(context: Context): string {
  const device: unknown = context.get("device");
  return typeof device === "string" ? device : "this machine";
}
