import type { ShopFailure } from "./ShopFailure";

const WORDS: Readonly<Record<Exclude<ShopFailure["kind"], "refused" | "not-allowed">, string>> = {
  away: "The shop's computer cannot be reached.",
  full: "The disk of the shop's computer is full.",
  "read-only": "The disk of the shop's computer can only be read.",
  database: "The shop's database cannot be reached just now.",
  unpaired: "This device is not paired with the shop's computer.",
};

/** What was asked for could not be had; the message can be shown. */
export class ShopFailureError extends Error {
  override readonly name = "ShopFailureError";
  readonly failure: ShopFailure;

  constructor(failure: ShopFailure) {
    super("why" in failure ? failure.why : WORDS[failure.kind]);
    this.failure = failure;
  }
}
