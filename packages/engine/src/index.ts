export type { Board } from "./Board";
export type { Plan } from "./Plan";
export { planBuild } from "./planBuild";
export { formatLength } from "./foundation/formatLength";
export { formatQuantity } from "./foundation/formatQuantity";
export { type ParsedQuantity, parseQuantity } from "./foundation/parseQuantity";
export type { Dimension, Quantity, Units } from "./foundation/quantity";
export { quoteText } from "./foundation/quoteText";
