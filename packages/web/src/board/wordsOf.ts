import type { PartId } from "./parts";

/** The part of the glossary that has the words of each part of the build. */
export const WORDS_OF: Readonly<Record<PartId, string>> = {
  measure: "The board",
  fins: "Fins",
  glass: "Glass and resin",
  cut: "Glass and resin",
  mix: "Glass and resin",
  sand: "Finish",
  seal: "Finish",
  water: "Finish",
};
