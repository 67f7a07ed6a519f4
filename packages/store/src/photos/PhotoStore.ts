import type { Readable } from "node:stream";
import type { Bytes } from "../content/ContentStore";
import type { PhotoType } from "./photoTypeOf";

/** A picture of a board, kept as the file that came. */
export interface Photo {
  /** The SHA-256 of its bytes, which names it. */
  readonly hash: string;
  readonly type: PhotoType;
  readonly sizeBytes: number;
  readonly keptAt: string;
  readonly device: string;
}

export interface PhotoWrite {
  readonly boardId: string;
  readonly bytes: Bytes;
  readonly device: string;
}

export type PhotoResult =
  | { readonly kind: "kept"; readonly photo: Photo; readonly isNew: boolean }
  | { readonly kind: "no-board" }
  | { readonly kind: "too-large" }
  /** Neither JPEG, PNG nor WebP. */
  | { readonly kind: "not-accepted" };

/** As a telephone makes them, with room. */
export const LARGEST_PHOTO_BYTES = 20_000_000;

export interface FoundPhoto {
  readonly photo: Photo;
  open(): Promise<Readable>;
}

export interface PhotoStore {
  /** In the order in which they came. */
  list(boardId: string): Promise<readonly Photo[]>;
  /** The same picture again is the one that is there. */
  add(asked: PhotoWrite): Promise<PhotoResult>;
  find(boardId: string, hash: string): Promise<FoundPhoto | null>;
}
