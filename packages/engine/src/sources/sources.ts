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
  "polyester-sheets": {
    title: "generic data sheets of orthophthalic polyester (test methods ISO 1675 and ISO 3521)",
    confidence: "C",
  },
  "polyester-memory": { title: "data sheets of orthophthalic polyester, from memory", confidence: "M" },
  "peroxide-sheets": {
    title:
      "three published polyester data sheets: dose 1 to 2 or 2.5 %, never above 4 %, no cure below 15 °C",
    confidence: "C",
  },
  "peroxide-density": { title: "data sheets of ketone peroxide solutions, from memory", confidence: "M" },
  "gel-table-115nt": {
    title:
      "gel-time table in a published data sheet of an ortho polyester with cobalt promoter (sheet 115NT)",
    confidence: "C",
  },
  "gel-tables-two-sheets": {
    title: "exponents and scatter worked out from two published gel-time tables (sheets 115NT and 2-446PA)",
    confidence: "D",
  },
  "redox-cure-energy": {
    title: "redox cure of polyester, 40 to 60 kJ/mol: J. Appl. Polym. Sci. 102:1870",
    confidence: "C",
  },
  "epoxy-sheets": { title: "published data sheets of laminating epoxies", confidence: "C" },
  "epoxy-memory": { title: "data sheets of laminating epoxies, from memory", confidence: "M" },
  "epoxy-halving": {
    title: "an epoxy maker's rule that pot life halves for each 18 °F, worked out as 51 kJ/mol",
    confidence: "D",
  },
  "wax-supplier": { title: "supplier's note: wax in styrene, 1.6 to 3.1 % by volume", confidence: "C" },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
