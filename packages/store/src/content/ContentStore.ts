import type { Readable } from "node:stream";

/** A file that is kept under the SHA-256 of its bytes: the same bytes are kept once, and a file never changes. */
export interface KeptContent {
  readonly hash: string;
  readonly sizeBytes: number;
}

export interface ContentLimits {
  readonly mostBytes: number;
  /** Looks at the first bytes, up to `HEAD_BYTES` of them, and says whether the rest is wanted. */
  readonly accepts: (head: Uint8Array) => boolean;
  /** Sees each part as it comes, the first ones before the head is whole, and the end as null; says whether the rest is wanted. */
  readonly follows?: (part: Uint8Array | null) => boolean;
}

export const HEAD_BYTES = 32;

export type Taken =
  | { readonly kind: "kept"; readonly content: KeptContent }
  | { readonly kind: "too-large" }
  | { readonly kind: "not-accepted" };

export interface ContentStore {
  /** Writes what comes to a file of its own and moves it into place when it is on the disk; a refused one leaves nothing. */
  take(parts: Bytes, limits: ContentLimits): Promise<Taken>;
  /** The file's bytes. Throws MissingContentError. */
  open(hash: string): Promise<Readable>;
  /** Writes what comes to a file that lasts until it is removed. */
  wait(parts: Bytes): Promise<{ readonly bytes: Readable; remove(): Promise<void> }>;
}

export type Bytes = AsyncIterable<Uint8Array> | Iterable<Uint8Array>;

/** A file that a row names is not in the shop's folder: it was moved or taken away by hand. */
export class MissingContentError extends Error {
  constructor(hash: string) {
    super(`the file ${hash} is missing in the shop's folder, under content`);
  }
}
