import type { z } from "zod";
import type { ZodMiniType } from "zod/mini";

/** One call of the HTTP interface: what it takes and what it gives where it is met. Otherwise it gives problem details. */
export interface HttpCall {
  readonly method: "get" | "put" | "post" | "patch" | "delete";
  /** `/api/boards/{id}` */
  readonly path: string;
  readonly says: string;
  readonly takes?: HttpBody;
  /** By status. */
  readonly gives: Readonly<Record<number, HttpBody | null>>;
  /** The revision comes with it, and can be sent back: to be spared the same again, or to say what a change was made on. */
  readonly revision?: "reads" | "changes" | "makes";
}

/** A body of JSON by its schema's name among the parts, or of bytes in one of these types. */
export type HttpBody = { readonly json: string } | { readonly bytes: readonly string[] };

/** A body of JSON by its schema's name. */
export const json = (part: string): HttpBody => ({ json: part });

/** The schemas that calls name. */
export type HttpParts = Readonly<Record<string, z.ZodType | ZodMiniType>>;
