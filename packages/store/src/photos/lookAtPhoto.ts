import type { ContentLimits } from "../content/ContentStore";
import { measurePhoto, type PhotoMeasure, type PhotoSize } from "./measurePhoto";
import { LONGEST_PHOTO_SIDE, MOST_PHOTO_PIXELS } from "./PhotoStore";
import { type PhotoType, photoTypeOf } from "./photoTypeOf";

interface PhotoLook extends Required<Pick<ContentLimits, "accepts" | "follows">> {
  /** Null until it is known, or where it is none. */
  type(): PhotoType | null;
  /** The size of a picture that is refused for it; null where it is not. */
  tooLarge(): PhotoSize | null;
}

/** Looks at a photo while it comes in: what it is, and how many pixels it has before the rest is waited for. */
export function lookAtPhoto(): PhotoLook {
  const before: Uint8Array[] = [];
  let type: PhotoType | null = null;
  let measure: PhotoMeasure | null = null;
  const size = () => measure?.size() ?? null;
  const tooLarge = () => {
    const found = size();
    return found !== null && isTooLarge(found) ? found : null;
  };
  return {
    type: () => type,
    tooLarge,
    accepts(head) {
      type = photoTypeOf(head);
      return type !== null;
    },
    follows(part) {
      if (part !== null) before.push(part);
      // Until the head is whole nobody knows what it is.
      if (type === null) return part !== null;
      measure ??= measurePhoto(type);
      for (const each of before.splice(0)) measure.take(each);
      const found = size();
      if (found === null) return part !== null;
      return found.wide > 0 && found.high > 0 && !isTooLarge(found);
    },
  };
}

const isTooLarge = ({ wide, high }: PhotoSize): boolean =>
  wide * high > MOST_PHOTO_PIXELS || Math.max(wide, high) > LONGEST_PHOTO_SIDE;
