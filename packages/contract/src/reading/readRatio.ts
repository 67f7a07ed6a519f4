const RATIO = /^\s*(\d+(?:\.\d+)?)\s*:\s*(\d+(?:\.\d+)?)\s*$/;

/** A ratio as a data sheet writes it, `100:45`, base before hardener. */
export interface ReadRatio {
  readonly base: number;
  readonly hardener: number;
}

/** @returns null where it is not two numbers above nought with a colon between them */
export function readRatio(text: string): ReadRatio | null {
  const match = RATIO.exec(text);
  if (match === null) return null;
  const [base, hardener] = [Number(match[1]), Number(match[2])];
  return base > 0 && hardener > 0 ? { base, hardener } : null;
}
