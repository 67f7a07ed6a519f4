import { length, nameZone, type Plan } from "@lapline/engine";
import { asSentence, type Reader, showQuantity, tell, tellPhrase } from "@lapline/present";
import type { Colouring } from "./Colouring";
import { lapsOf } from "./lapsOf";
import type { SolidPlace } from "./SolidPlace";
import { RAIL_SHARE, zoneFinder } from "./zoneFinder";

/** Both sides are one to a builder below this. */
const ALIKE_M = 0.00005;

/** A touched place and what the plan says there: `Left rail, 600 mm from the tail: 40 µm of film left.` */
export function placeWords(
  colouring: Colouring,
  place: SolidPlace,
  of: { readonly plan: Plan; readonly reader: Reader },
): string {
  return asSentence(wordsOf(colouring, place, of));
}

function wordsOf(
  { id, valueAt }: Colouring,
  place: SolidPlace,
  { plan, reader }: { readonly plan: Plan; readonly reader: Reader },
): string {
  const t = tell(reader);
  const valueM = valueAt(place);
  const where = whereWords(place, plan, reader);
  const at = length(place.fromTailM, "coarse");
  const size = showQuantity(length(Math.abs(valueM)), { ...reader, units: "mm" });
  if (id === "difference") {
    if (Math.abs(valueM) < ALIKE_M) return t`${where}, ${at} from the tail: both sides are alike.`;
    return valueM > 0
      ? t`${where}, ${at} from the tail: ${size} fuller than the other side.`
      : t`${where}, ${at} from the tail: ${size} narrower than the other side.`;
  }
  if (id === "film") {
    return valueM < 0
      ? t`${where}, ${at} from the tail: through, ${size} short.`
      : t`${where}, ${at} from the tail: ${size} of film left.`;
  }
  const zone = zoneFinder(plan)(place);
  const laminate = showQuantity(length(zone?.laminateThicknessM ?? 0), { ...reader, units: "mm" });
  return t`${where}, ${at} from the tail: skin ${size}, ${laminate} of it laminate.`;
}

function whereWords({ side, face, fromEdgeM }: SolidPlace, { layup }: Plan, reader: Reader): string {
  const t = tell(reader);
  const lapM = layup === null ? 0.05 : lapsOf(layup)[face];
  if (fromEdgeM < RAIL_SHARE * lapM) return tellPhrase(nameZone(`rail-${side}`), reader);
  if (face === "deck") return side === "left" ? t`deck, left` : t`deck, right`;
  return side === "left" ? t`bottom, left` : t`bottom, right`;
}
