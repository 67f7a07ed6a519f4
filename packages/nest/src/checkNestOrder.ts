import type { NestOrder } from "./NestOrder";
import { signedArea, turnAndMoveToOrigin } from "./Ring";

/** What keeps an order from being laid out. */
export type NestFault =
  | { readonly kind: "no-pieces" }
  | { readonly kind: "no-roll"; readonly widthM: number }
  | { readonly kind: "no-shape"; readonly piece: string }
  /** It needs a roll at least this wide. */
  | { readonly kind: "too-wide"; readonly piece: string; readonly neededM: number };

const SLACK_M = 1e-9;

/** Every fault of an order; none where the search can begin. */
export function checkNestOrder({ pieces, widthM, gapM }: NestOrder): readonly NestFault[] {
  if (!(widthM > 0 && Number.isFinite(widthM) && gapM >= 0)) return [{ kind: "no-roll", widthM }];
  if (pieces.length === 0) return [{ kind: "no-pieces" }];
  return pieces.flatMap(({ id, points, turnsRad }): NestFault[] => {
    const outline = points.map(({ alongM, acrossM }) => [alongM, acrossM] as const);
    const areaM2 = Math.abs(signedArea(outline));
    if (!(areaM2 > 0) || turnsRad.length === 0) return [{ kind: "no-shape", piece: id }];
    const neededM = Math.min(
      ...turnsRad.map((turnRad) => Math.max(...turnAndMoveToOrigin(outline, turnRad).map(([, y]) => y))),
    );
    return neededM > widthM + SLACK_M ? [{ kind: "too-wide", piece: id, neededM }] : [];
  });
}
