import { type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import { computeLeading } from "./computeLeading";
import { type FinSpot, spotSide } from "./FinSpot";
import { computeRailM, placeOnBoard, type SetOutLine } from "./SetOutLine";

/**
 * Finds what keeps a placed fin from standing on the board: both ends of its base have to lie on the bottom.
 * @param who the name the fin goes by in what is said
 */
export function checkSpot(line: SetOutLine, spot: FinSpot, who: string): readonly Finding[] {
  const { fin, path } = spot;
  const leading = computeLeading(spot);
  const blocker = (code: string, field: string, says: Phrase) => [
    finding("blocker", code, `${path}.${field}`, says),
  ];
  if (leading.uM >= line.noseUM)
    return blocker(
      "finset.base-past-nose",
      "base",
      say`the ${who} fin's base of ${length(fin.baseM)} is longer than the ${length(line.noseUM - spot.uM)} from its mark to the nose`,
    );
  if (spot.vM < 0)
    return blocker(
      "finset.over-centreline",
      "fromRail",
      say`the ${who} fin's mark lies ${length(-spot.vM)} over the centreline: the rail is only ${length((fin.fromRailM ?? 0) + spot.vM)} from it there`,
    );
  const ends = [
    { name: "trailing", uM: spot.uM, vM: spot.vM },
    { name: "leading", ...leading },
  ];
  for (const end of ends) {
    const says = checkEnd(line, spot, { ...end, who });
    if (says !== null)
      return blocker("finset.outside-outline", end.name === "trailing" ? "fromRail" : "base", says);
  }
  return [];
}

interface BaseEnd {
  readonly who: string;
  readonly name: string;
  readonly uM: number;
  readonly vM: number;
}

function checkEnd(line: SetOutLine, spot: FinSpot, { who, name, uM, vM }: BaseEnd): Phrase | null {
  const { shape } = line;
  const side = spotSide(spot);
  const railM = computeRailM(line, side, uM);
  if (railM === null)
    return say`the ${who} fin's ${name} mark, ${length(uM)} from the tail, is not on the board`;
  if (vM < 0 && spot.side !== "centre")
    return say`the ${who} fin's ${name} mark lies ${length(-vM)} over the centreline: give it less toe, or set it nearer to the rail`;
  if (vM > railM)
    return say`the ${who} fin's ${name} mark lies ${length(vM - railM)} outside the outline, which is ${length(railM)} from the centreline there: move it in, or farther up the board`;
  const at = placeOnBoard(line, side, uM, vM);
  const notchM = shape.notchHalfWidthM(at.xM);
  if (notchM > 0 && Math.abs(at.yM) < notchM)
    return say`the ${who} fin's ${name} mark lies in the tail's notch, which is ${length(notchM)} wide to each side there: move it out, or up past the crotch`;
  return null;
}
