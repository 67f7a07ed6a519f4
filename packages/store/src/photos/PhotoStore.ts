import type { Readable } from "node:stream";
import type { Bytes } from "../content/ContentStore";
import type { PhotoSize } from "./measurePhoto";
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
  /** How many photos the board may have with it; as many as come if left out. */
  readonly most?: number;
}

export type PhotoResult =
  | { readonly kind: "kept"; readonly photo: Photo; readonly isNew: boolean }
  | { readonly kind: "no-board" }
  | { readonly kind: "too-large" }
  /** Neither JPEG, PNG nor WebP, or without the size that it has. */
  | { readonly kind: "not-accepted" }
  | { readonly kind: "too-many-pixels"; readonly size: PhotoSize }
  /** The board has as many as it may have by now. */
  | { readonly kind: "too-many" };

/** As a telephone makes them, with room. */
export const LARGEST_PHOTO_BYTES = 20_000_000;
/**
 * Unpacked, a picture takes four bytes a pixel in the memory of whoever looks at it, however small its file is: 200 MB at most, which
 * a telephone can show. That is 8,160 by 6,120, and a panorama within the longest side that screens take as one picture.
 */
export const MOST_PHOTO_PIXELS = 50_000_000;
export const LONGEST_PHOTO_SIDE = 16_384;

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
