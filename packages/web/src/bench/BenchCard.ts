/** One screen of a step. */
export type BenchCard =
  | { readonly kind: "start"; readonly id: "start" }
  | { readonly kind: "cut"; readonly id: string; readonly roll: string; readonly cut: string }
  | { readonly kind: "lay"; readonly id: "lay"; readonly coat: string }
  /** Counted from nought, in the order in which they are mixed. */
  | { readonly kind: "cup"; readonly id: string; readonly coat: string; readonly number: number }
  | { readonly kind: "clock"; readonly id: "clock"; readonly coat: string }
  | { readonly kind: "mark"; readonly id: string; readonly fin: string; readonly end: MarkEnd }
  | { readonly kind: "plug"; readonly id: "plug" }
  | { readonly kind: "gate"; readonly id: string; readonly checks: readonly string[] }
  | { readonly kind: "paper"; readonly id: string; readonly grit: string }
  | { readonly kind: "through"; readonly id: "through" }
  | { readonly kind: "weigh"; readonly id: "weigh"; readonly after: string };

/** Where a base ends; `stand` is how the fin stands on it. */
export type MarkEnd = "trailing" | "leading" | "stand";
