import type { MiddlewareHandler } from "hono";
import { setAsker } from "./Access";

/** Whoever sits at this machine is its keeper, without a code. */
export const admitHere: MiddlewareHandler = async (context, next) => {
  setAsker(context, { isHere: true, device: null });
  await next();
};
