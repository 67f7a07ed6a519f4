/** Why the shop's computer did not do what was asked. */
export type ShopFailure =
  | { readonly kind: "away" }
  /** Its disk is full or can only be read, or its database is away: nothing was kept. */
  | { readonly kind: "full" | "read-only" | "database" }
  | { readonly kind: "unpaired" }
  | { readonly kind: "not-allowed"; readonly why: string }
  | { readonly kind: "refused"; readonly why: string };

/** Problem details (RFC 9457) as far as the page reads them. */
interface Details {
  readonly detail?: unknown;
  readonly state?: unknown;
}

/** What an answer other than a good one means; a 5xx without a state is told as the shop's computer away: it is tried again. */
export function failureOf(status: number, answer: unknown): ShopFailure {
  const { detail, state } = (typeof answer === "object" && answer !== null ? answer : {}) as Details;
  const why = typeof detail === "string" ? detail : `The shop's computer answered ${status}.`;
  if (status === 401) return { kind: "unpaired" };
  if (status === 403) return { kind: "not-allowed", why };
  if (state === "full" || state === "read-only") return { kind: state };
  if (state === "away") return { kind: "database" };
  return status >= 500 ? { kind: "away" } : { kind: "refused", why };
}
