/** The `shop.rolls` part of a board file, in SI, by the cloth's id; price is for a metre, in the shop's own money. */
export type RollsInput = Readonly<Record<string, { readonly widthM?: number; readonly price?: number }>>;
