/** To a millionth of a millimetre, so that no figure needs an exponent, which not every reader takes. */
export const roundMm = (valueMm: number): number => Math.round(valueMm * 1e6) / 1e6 + 0;
