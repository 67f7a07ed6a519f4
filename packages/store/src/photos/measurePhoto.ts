import type { PhotoType } from "./photoTypeOf";

/** In pixels. */
export interface PhotoSize {
  readonly wide: number;
  readonly high: number;
}

/** Reads how large a picture is while its bytes go by; none of it is unpacked, and little of it is kept in memory. */
export interface PhotoMeasure {
  take(part: Uint8Array): void;
  /** Null until it is known. */
  size(): PhotoSize | null;
}

/** Enough for the head of a PNG or WebP, and for a frame header of a JPEG. */
const HEAD = 32;

export function measurePhoto(type: PhotoType): PhotoMeasure {
  return type === "image/jpeg" ? measureJpeg() : measureHead(type === "image/png" ? readPng : readWebp);
}

function measureHead(read: (head: DataView) => PhotoSize | null): PhotoMeasure {
  let head = new Uint8Array();
  return {
    take(part) {
      if (head.length < HEAD) head = Buffer.concat([head, part.subarray(0, HEAD - head.length)]);
    },
    size: () => (head.length < HEAD ? null : read(viewOf(head))),
  };
}

const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** ISO/IEC 15948, 11.2.2: the header comes first, its fields in network byte order. */
const readPng = (head: DataView): PhotoSize => ({ wide: head.getUint32(16), high: head.getUint32(20) });

/** RFC 9649, 2.5 (lossy; the frame's header is RFC 6386, 9.1), 2.6 (lossless) and 2.7 (with more in it: the canvas). */
function readWebp(head: DataView): PhotoSize | null {
  const chunk = String.fromCharCode(...Array.from({ length: 4 }, (_, i) => head.getUint8(12 + i)));
  switch (chunk) {
    case "VP8 ":
      return { wide: head.getUint16(26, true) & 0x3fff, high: head.getUint16(28, true) & 0x3fff };
    case "VP8L": {
      const bits = head.getUint32(21, true);
      return { wide: 1 + (bits & 0x3fff), high: 1 + ((bits >> 14) & 0x3fff) };
    }
    case "VP8X":
      return {
        wide: 1 + (head.getUint32(24, true) & 0xffffff),
        high: 1 + (head.getUint32(26, true) >>> 8),
      };
    default:
      return null;
  }
}

/** Frame headers SOF0 to SOF15, without DHT, JPG and DAC in their midst (ISO/IEC 10918-1, table B.1). */
const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Markers that stand alone: TEM, RST0 to RST7, SOI. */
const isAlone = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);
/** Behind these come the pictures' own bytes, or nothing. */
const isEnd = (marker: number) => marker === 0xda || marker === 0xd9;
const FRAME_BYTES = 7;

/** ISO/IEC 10918-1, B.1.1 and B.2.2: from marker to marker by each segment's own length, to the first frame's header. */
function measureJpeg(): PhotoMeasure {
  let size: PhotoSize | null = null;
  let isOver = false;
  let skip = 0;
  let held = new Uint8Array();
  /** Takes the next segment out of what is held; false where more is needed first. */
  const step = (): boolean => {
    const view = viewOf(held);
    if (held.length < 2) return false;
    if (held[0] !== 0xff) {
      isOver = true;
      return false;
    }
    const marker = view.getUint8(1);
    // Any number of bytes may fill up before a marker.
    if (marker === 0xff) return drop(1);
    if (isAlone(marker)) return drop(2);
    if (isEnd(marker)) {
      isOver = true;
      return false;
    }
    if (held.length < 4) return false;
    const length = view.getUint16(2);
    if (!isFrame(marker)) return drop(2 + Math.max(2, length));
    if (held.length < 2 + FRAME_BYTES) return false;
    size = { high: view.getUint16(5), wide: view.getUint16(7) };
    isOver = true;
    return false;
  };
  const drop = (bytes: number): boolean => {
    skip = Math.max(0, bytes - held.length);
    held = held.subarray(bytes);
    return skip === 0;
  };
  return {
    take(part) {
      if (isOver) return;
      const skipped = Math.min(skip, part.length);
      skip -= skipped;
      if (skip > 0) return;
      held = Buffer.concat([held, part.subarray(skipped)]);
      while (step());
    },
    size: () => size,
  };
}
