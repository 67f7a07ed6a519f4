/** A quantity as a builder writes it, with its unit: `11 1/4 in`, `136 g/m2`, `18 C`. */
export type QuantityText = string;
