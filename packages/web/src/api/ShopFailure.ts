/** Why the shop's computer did not do what was asked. */
export type ShopFailure =
  | { readonly kind: "away" }
  /** Its disk is full or can only be read, or its database is away: nothing was kept. */
  | { readonly kind: "full" | "read-only" | "database" }
  | { readonly kind: "unpaired" }
  | ({ readonly kind: "not-allowed" } & Refusal)
  | ({ readonly kind: "refused" } & Refusal);

/** What was said of it: `why` for whoever reads English, and what `failureWords` makes its own sentence from. */
interface Refusal {
  readonly why: string;
  /** What it is called (RFC 9457, `title`), which is the same each time. */
  readonly title?: string;
  /** The status, and the fields that came beside the title. */
  readonly fields?: Readonly<Record<string, unknown>>;
}

/** Problem details (RFC 9457) as far as the page reads them. */
interface Details {
  readonly title?: unknown;
  readonly detail?: unknown;
  readonly state?: unknown;
}

/** A 503 that is no fault of the shop's computer: it says of one request that it has no turn just now. */
const PASSING: ReadonlySet<string> = new Set(["Busy", "Took too long"]);

/** What an answer other than a good one means; a 5xx without a state is told as the shop's computer away: it is tried again. */
export function failureOf(status: number, answer: unknown): ShopFailure {
  const fields = { ...(typeof answer === "object" ? answer : {}), status };
  const { title, detail, state } = fields as Details;
  const why = typeof detail === "string" ? detail : `The shop's computer answered ${status}.`;
  if (status === 401) return { kind: "unpaired" };
  const refusal = { why, fields, ...(typeof title === "string" && { title }) };
  if (status === 403) return { kind: "not-allowed", ...refusal };
  if (state === "full" || state === "read-only") return { kind: state };
  if (state === "away") return { kind: "database" };
  if (PASSING.has(refusal.title ?? "")) return { kind: "refused", ...refusal };
  return status >= 500 ? { kind: "away" } : { kind: "refused", ...refusal };
}
