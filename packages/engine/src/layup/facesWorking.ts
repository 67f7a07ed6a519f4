import { OWN_RATIO_SPREAD_SHARE, RESIN_RATIO } from "../constants/handling";
import { say } from "../foundation/phrase";
import { area, count, length } from "../foundation/quantity";
import type { WorkingTable } from "../foundation/stage";
import { bandWorking } from "./bandWorking";
import { fromLayup, type LayupContext } from "./LayupContext";

/** How the measures of the two faces, the rail's line and the maker's ratio come about. */
export const facesWorking: WorkingTable<LayupContext> = {
  "layup.faces[].areaM2": {
    words:
      "true surface of the face down to the rail's widest line, rocker included, and half of the tail's flat end",
    formula: "A = A_surface + A_end / 2",
    sources: ["geometry", "convention"],
    inputs: ({ plan: { shape } }, [id]) =>
      shape === null
        ? []
        : [
            { name: "surface by shape", value: area(id === "deck" ? shape.deckAreaM2 : shape.bottomAreaM2) },
            { name: "tail's flat end", value: area(shape.endAreaM2) },
          ],
  },
  "layup.faces[].arcM": {
    words: "length of the face on the centreline from tail to nose, its curve followed",
    formula: "Σ √(Δx² + Δz²) over 96 steps",
    sources: ["geometry"],
    inputs: ({ plan: { shape } }) =>
      shape === null
        ? []
        : [
            { name: "straight length", value: length(shape.lengthM) },
            { name: "along the bottom", value: length(shape.lengthTapeM) },
          ],
  },
  "layup.faces[].girthMaxM": {
    words: "across the face along the skin where it is widest, from widest line to widest line",
    formula: "max over x of (girth left + girth right)",
    sources: ["geometry"],
    inputs: ({ plan: { shape } }) =>
      shape === null ? [] : [{ name: "straight width at the widest", value: length(shape.widthMaxM) }],
  },
  "layup.faces[].lapM": {
    words: "from the rail's widest line around to the cloth's edge, as the board file or the default has it",
    formula: "as given",
    sources: ["common-practice"],
    inputs: ({ board: { glass } }, [id]) => {
      const lapM = id === "deck" ? glass?.deck?.lapM : glass?.bottom?.lapM;
      return [{ name: "lap in the board file", value: lapM === undefined ? "not given" : length(lapM) }];
    },
  },
  "layup.railLineM": {
    words: "length of the rail's widest line all the way round: both rails, flat ends and a swallow's notch",
    formula: "Σ √(Δx² + Δy² + Δz²)",
    sources: ["geometry"],
    inputs: ({ plan: { shape } }) =>
      shape === null
        ? []
        : [
            { name: "straight length", value: length(shape.lengthM) },
            { name: "straight width at the widest", value: length(shape.widthMaxM) },
          ],
  },
  ...bandWorking("layup.resinRatio", "", {
    words: "cured resin to one of glass by mass: your own, or what cloth squeegeed by hand holds",
    formula: say`as given, ± ${100 * OWN_RATIO_SPREAD_SHARE.value} %; without: ${RESIN_RATIO.value}, band ${RESIN_RATIO.low} to ${RESIN_RATIO.high}`,
    sources: [RESIN_RATIO.source, OWN_RATIO_SPREAD_SHARE.source],
    inputs: fromLayup((layup, _, { board: { glass } }) => [
      {
        name: "in the board file",
        value: glass?.resinRatio === undefined ? "not given" : count(glass.resinRatio),
      },
      { name: "taken", value: count(layup.resinRatio) },
    ]),
  }),
};
