/** A page of a PDF has at most 14,400 units of 1/72 in (ISO 32000-1, annex C, from memory). */
export const LONGEST_PAGE_MM = (14_400 / 72) * 25.4;

/** One long sheet would be longer than a PDF's page can be; pages that are joined are not. */
export class SheetTooLongError extends Error {
  constructor(sheetMm: number) {
    super(
      `the sheet would be ${Math.ceil(sheetMm)} mm long, and a PDF's page is ${LONGEST_PAGE_MM} mm at most: take pages that are joined, or an SVG or DXF file`,
    );
  }
}
