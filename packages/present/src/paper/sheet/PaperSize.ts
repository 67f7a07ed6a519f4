export type PaperName = "a4" | "letter" | "a3" | "roll";
export type PageName = Exclude<PaperName, "roll">;

/** Upright, in millimetres. ISO 216 (A3, A4) and ANSI/ASME Y14.1 size A (8 1/2 by 11 in); both from memory. */
export const PAGE_SIZES: Readonly<Record<PageName, { readonly widthMm: number; readonly heightMm: number }>> =
  {
    a4: { widthMm: 210, heightMm: 297 },
    letter: { widthMm: 215.9, heightMm: 279.4 },
    a3: { widthMm: 297, heightMm: 420 },
  };
