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
  "shelf-packing": {
    title:
      "Coffman, Garey, Johnson and Tarjan, SIAM Journal on Computing 9 (1980): level-oriented packing (from memory)",
    confidence: "M",
  },
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
  "still-air-memory": {
    title: "heat-transfer textbooks, free convection in gases 2 to 25 W/(m² K), from memory",
    confidence: "M",
  },
  "emission-table": {
    title: "40 CFR 63 subpart VVVV, table 3: kg of styrene per Mg of resin = 0.014 (percent)^2.275",
    confidence: "C",
  },
  "niosh-guide": { title: "NIOSH Pocket Guide to Chemical Hazards, styrene", confidence: "C" },
  "osha-z2": { title: "OSHA, 29 CFR 1910.1000 table Z-2, styrene", confidence: "C" },
  "limits-memory": { title: "published limits for styrene in air, from memory", confidence: "M" },
  "dilution-formula": {
    title: "dilution air for a solvent, as ACGIH's form stands in two teaching notes",
    confidence: "C",
  },
  "own-sheet": { title: "your own data sheet or cups, as the board file gives them", confidence: "C" },
  "sunlight-memory": { title: "data sheets of sunlight-cured polyester, from memory", confidence: "M" },
  "epoxy-halving": {
    title: "an epoxy maker's rule that pot life halves for each 18 °F, worked out as 51 kJ/mol",
    confidence: "D",
  },
  "wax-supplier": { title: "supplier's note: wax in styrene, 1.6 to 3.1 % by volume", confidence: "C" },
  "e-glass-sheet": {
    title: "E-glass fibre property sheet, density by ASTM C693, 2550 to 2580 kg/m³",
    confidence: "C",
  },
  "s-glass-memory": { title: "property sheets of high-strength glass fibre, from memory", confidence: "M" },
  "fibre-memory": { title: "property sheets of carbon and basalt fibre, from memory", confidence: "M" },
  "stiffness-memory": {
    title: "textbook values of the stiffness of resins, fibres, foams and woods, from memory",
    confidence: "M",
  },
  "xps-bending-test": {
    title:
      "published bending test of extruded polystyrene at 26, 32 and 49 kg/m³: 13 to 16, 19 to 20, 34 to 35 MPa",
    confidence: "C",
  },
  "hoff-wrinkling": {
    title:
      "Hoff and Mautner 1945, wrinkling of a skin on foam: k 0.91 in theory, 0.5 as a knock-down (from memory)",
    confidence: "M",
  },
  "kaw-laminate": {
    title: "classical lamination theory: Kaw, Mechanics of Composite Materials, ch. 4 (from memory)",
    confidence: "M",
  },
  "resin-glass-chart": {
    title: "workshop chart of resin to glass by mass, hand lay-up 0.75 to 1.1 (a weak source)",
    confidence: "c",
  },
  "wood-tables": {
    title:
      "published tables of seasoned wood: basswood 26 lb/ft³, balsa 170, spruce 450, red cedar 380 kg/m³",
    confidence: "c",
  },
  "filler-memory": {
    title: "data sheets of fillers: density of hollow glass spheres and of fumed silica, from memory",
    confidence: "M",
  },
  "wood-memory": { title: "densities of seasoned wood, from memory", confidence: "M" },
  "reading-step": {
    title: "GUM (JCGM 100), clause F.2.2.1: a digital reading lies anywhere within half a step (from memory)",
    confidence: "M",
  },
  archimedes: {
    title: "Archimedes' principle: lift = density of the water × volume under it",
    confidence: "D",
  },
  "sea-water-memory": {
    title: "equation of state of sea water (UNESCO EOS-80): 1025 kg/m³ at salinity 35 and 20 °C, from memory",
    confidence: "M",
  },
  "plastics-memory": { title: "densities of engineering plastics, from memory", confidence: "M" },
  "kaw-mixture": {
    title: "rule of mixtures: Kaw, Mechanics of Composite Materials, ch. 3 (from memory)",
    confidence: "M",
  },
  "codata-2018": { title: "CODATA 2018, exact molar gas constant (from memory)", confidence: "M" },
  "student-t": { title: "standard table of Student's t (from memory)", confidence: "M" },
  "alduchov-1996": {
    title: "Alduchov and Eskridge 1996, improved Magnus form: a 17.625, b 243.04 °C",
    confidence: "D",
  },
  arrhenius: {
    title:
      "Arrhenius law with a power of the dose, fitted to the sheet's points by least squares in ln(time)",
    confidence: "D",
  },
  "peroxide-sheets-safety": {
    title:
      "peroxide makers' sheets: store below 25 °C, never with promoter or acetone, spills and rags can ignite",
    confidence: "C",
  },
  "exotherm-sheets": {
    title: "makers' notes on exotherm: small cups, spread early, outdoors, no foam or glass cups",
    confidence: "C",
  },
  "eps-softening": { title: "EPS makers' sheets: softens from about 75 °C", confidence: "C" },
  "fepa-chart": {
    title: "grain charts after FEPA 43-1 and ISO 6344, and of US (CAMI) grades; the standards not seen",
    confidence: "c",
  },
  "metal-roughness-chart": {
    title: "weak chart for metal: Ra 1/60 to 1/100 of the grain; for resin your own readings go before it",
    confidence: "c",
  },
  "schlichting-roughness": {
    title: "Schlichting, Boundary-Layer Theory, ch. 21: admissible roughness 100 ν/U (from memory)",
    confidence: "M",
  },
  "ittc-water": {
    title: "ITTC 7.5-02-01-03, water of 15 °C: salt 1.18831e-6 m²/s (second-hand)",
    confidence: "c",
  },
  "sanded-hulls": {
    title: "Schultz 2002, measured plates: even 600-grit paint lay above polished",
    confidence: "C",
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
