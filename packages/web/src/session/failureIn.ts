import type { ShopFailure } from "../api/ShopFailure";
import { ShopFailureError } from "../api/ShopFailureError";

/** Why the shop's computer did not answer as it should; what is not known is as if it were away. */
export function failureIn(error: unknown): ShopFailure {
  return error instanceof ShopFailureError ? error.failure : { kind: "away" };
}

/** It is worth trying again by itself. */
export function isPassing({ kind }: ShopFailure): boolean {
  return kind === "away" || kind === "full" || kind === "read-only" || kind === "database";
}
