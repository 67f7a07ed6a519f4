import { createHash } from "node:crypto";

/** Differs whenever the text differs. */
export function revisionOf(text: string): string {
  return createHash("sha256").update(text).digest("hex").slice(0, 32);
}
