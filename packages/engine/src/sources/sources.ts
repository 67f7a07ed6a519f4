/**
 * Where numbers and formulas come from. `confidence` as in docs/architecture.md: C confirmed against a retrieved text,
 * c second-hand, D derived here from C, M from memory until someone has read the source, CP common practice.
 */
export interface Source {
  readonly title: string;
  readonly confidence: "C" | "c" | "D" | "M" | "CP";
}

export const SOURCES = {
  "common-practice": { title: "common practice, no source", confidence: "CP" },
  convention: { title: "declared convention of this program", confidence: "CP" },
  geometry: { title: "plane geometry and trigonometry", confidence: "D" },
  "mass-balance": { title: "arithmetic: mass = density × volume, areal mass × area", confidence: "D" },
  "nist-811": { title: "NIST SP 811, exact unit factors (from memory)", confidence: "M" },
  "kulfan-2007": {
    title: "Kulfan and Bussoletti, class and shape functions (Kulfan, AIAA 2007-62; from memory)",
    confidence: "M",
  },
  "lame-curves": { title: "area of a Lamé curve by the gamma function (standard integral)", confidence: "D" },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
