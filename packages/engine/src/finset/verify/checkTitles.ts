/** What each kind of check goes by. */
export const CHECK_TITLES = {
  "bottom-up": "Bottom up",
  "nose-away": "Nose away",
  "left-named": "LEFT named",
  string: "String",
  diagonals: "Diagonals",
  marks: "Both marks",
  sides: "Both sides alike",
  cant: "Cant block",
  "dry-fit": "Box tried on scrap",
  "depth-stop": "Depth stop",
  proud: "Proud height",
  "slots-taped": "Slots taped",
  "base-fits": "Base fits",
} as const;

export type CheckMatter = keyof typeof CHECK_TITLES;
