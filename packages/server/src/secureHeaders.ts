import type { MiddlewareHandler } from "hono";

const POLICY = [
  "default-src 'self'",
  "img-src 'self' data: blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join("; ");

/** Keeps the page to its own scripts, styles and data, and out of other pages' frames. */
export const secureHeaders: MiddlewareHandler = async (context, next) => {
  await next();
  // Files that were sent in have a tighter one of their own.
  if (!context.res.headers.has("content-security-policy")) context.header("content-security-policy", POLICY);
  context.header("x-content-type-options", "nosniff");
  context.header("referrer-policy", "no-referrer");
  context.header("cross-origin-resource-policy", "same-origin");
};
