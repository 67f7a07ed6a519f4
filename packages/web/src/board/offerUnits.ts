const UNITS = { length: ["in", "mm"], angle: ["deg"], mass: ["kg", "g"], film: ["µm", "mm"] } as const;

/** A number, a fraction or a mixed number, signed or not, with nothing behind it. */
const BARE = /^\s*[-+−]?\s*\d+(?:[.,]\d+)?(?:\s+\d+\/\d+|\/\d+)?\s*$/;

/** What a bare number could have been meant as: `6 1/16` is `6 1/16 in` or `6 1/16 mm`. Nothing where there is a unit, or no number. */
export function offerUnits(text: string, dimension: keyof typeof UNITS): readonly string[] {
  return BARE.test(text) ? UNITS[dimension].map((unit) => `${text.trim()} ${unit}`) : [];
}
