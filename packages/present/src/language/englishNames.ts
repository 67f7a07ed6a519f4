/**
 * What coats, steps and fins are called in English where the plan has an id: read as words. German has its own words for them
 * in its catalogue; the page and the paper say them alike.
 */
const NAMED = new Set([
  "box-centre",
  "front-left",
  "front-right",
  "rear-left",
  "rear-right",
  "mark-fins",
  "mask-bottom",
  "mask-deck",
  "seal-bottom",
  "seal-deck",
  "laminate-bottom",
  "laminate-deck",
  "trim-bottom",
  "trim-deck",
  "laps-bottom",
  "fill-bottom",
  "fill-deck",
  "gloss-bottom",
  "gloss-deck",
  "set-boxes",
  "set-leash-plug",
  "leash-plug",
  "sand-bottom",
  "sand-deck",
  "wet-sand",
  "cure-out",
  "polyester-hardener",
  "epoxy-hardener",
]);

/** `fill-bottom` as "fill bottom"; any other text as it is. */
export function englishName(text: string): string {
  return NAMED.has(text) ? text.replaceAll("-", " ") : text;
}
