import { z } from "zod";

/** How a Sheet is to be made; everything may be left out. */
export interface SheetAsked {
  /** Of the board; the newest if left out. */
  readonly version?: number;
  readonly paper?: "a4" | "letter";
  readonly units?: "inch" | "mm";
  readonly language?: "en" | "de";
}

export const sheetAskedSchema: z.ZodType<SheetAsked> = z.strictObject({
  version: z.int().min(1).exactOptional(),
  paper: z.enum(["a4", "letter"]).exactOptional(),
  units: z.enum(["inch", "mm"]).exactOptional(),
  language: z.enum(["en", "de"]).exactOptional(),
});
