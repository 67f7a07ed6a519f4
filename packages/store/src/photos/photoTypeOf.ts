const TYPES = [
  // ISO/IEC 10918-1 (start of image), ISO/IEC 15948 5.2 (signature), RFC 9649 2.4 (RIFF header).
  ["image/jpeg", /^ffd8ff/],
  ["image/png", /^89504e470d0a1a0a0000000d49484452/],
  ["image/webp", /^52494646.{8}57454250/],
] as const;

export type PhotoType = (typeof TYPES)[number][0];

/** What the bytes themselves say they are, whatever name or type they came under; null where they are no photo that is taken. */
export function photoTypeOf(head: Uint8Array): PhotoType | null {
  const hex = Buffer.from(head).toString("hex");
  return TYPES.find(([, signature]) => signature.test(hex))?.[0] ?? null;
}

export const isPhotoType = (word: unknown): word is PhotoType => TYPES.some(([type]) => type === word);
