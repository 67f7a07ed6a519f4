import type { MaterialsInput } from "../materials/MaterialsInput";

/** The `shop.rolls` part of a board file, in SI, by the cloth's id; price is for a metre, in the shop's own money. */
export type RollsInput = Readonly<Record<string, { readonly widthM?: number; readonly price?: number }>>;

/** What the cut plan needs of a board: its rolls, and the builder's own cloths. */
export interface RollsBoard {
  readonly shop?: { readonly rolls?: RollsInput | undefined } | undefined;
  readonly materials?: MaterialsInput | undefined;
}
