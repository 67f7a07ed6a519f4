import type { ContentfulStatusCode } from "hono/utils/http-status";

/** What went wrong, for a person and for a program (problem details, RFC 9457). */
interface Problem {
  readonly status: ContentfulStatusCode;
  readonly title: string;
  readonly detail: string;
  /** One entry for each thing wrong with a board file. */
  readonly problems?: readonly unknown[];
  /** What a client needs besides, under names of its own (RFC 9457, section 3.2). */
  readonly [more: string]: unknown;
}

/** The answer to a request that could not be met, as `application/problem+json`. */
export function problem(what: Problem, headers: Readonly<Record<string, string>> = {}): Response {
  return new Response(JSON.stringify({ type: "about:blank", ...what }), {
    status: what.status,
    headers: { "content-type": "application/problem+json", "cache-control": "no-store", ...headers },
  });
}
