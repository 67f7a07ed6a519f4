import type { Stretch } from "../pdf/PaperDocument";

/** What the printed 100 mm rulers measure, in millimetres: the one along the page's lower edge and the upright one. */
export interface RulerReads {
  readonly acrossMm: number;
  readonly upMm: number;
}

export const TRUE_RULER: RulerReads = { acrossMm: 100, upMm: 100 };

/** How much larger a page must be drawn so that this printer prints it true. */
export const stretchFor = ({ acrossMm, upMm }: RulerReads): Stretch => ({
  x: 100 / acrossMm,
  y: 100 / upMm,
});

export const isTrue = ({ acrossMm, upMm }: RulerReads): boolean => acrossMm === 100 && upMm === 100;
