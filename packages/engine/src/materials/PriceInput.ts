/** What one pack of a material costs, in the shop's own money, and what is in it. */
export interface PriceInput {
  readonly price: number;
  readonly packKg?: number;
  readonly packM?: number;
  readonly packM3?: number;
  /** How many are in a pack; one where nothing is said. */
  readonly pieces?: number;
  /** How many this board takes, of what the plan does not reckon: discs, gloves, tape. */
  readonly use?: number;
}
