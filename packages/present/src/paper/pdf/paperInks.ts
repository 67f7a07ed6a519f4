import type { Tone } from "../../drawing/Pen";

/** Inks for paper, dark enough to be told from white on a printer without colour. */
export const PAPER_INKS: Readonly<Record<Tone, string>> = {
  graphite: "#1f1e1c",
  soft: "#57524b",
  resin: "#8a5300",
  tape: "#2f4655",
  sea: "#2f6152",
  lead: "#a8321f",
};

/** Areas that are filled plainly. */
export const PAPER_FILLS = { blank: "#ffffff", resin: "#f0cf8e", tape: "#dfe6ea" } as const;
