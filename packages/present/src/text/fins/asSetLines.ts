import { angle, length, type Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { correctionWords } from "../../words/correctionWords";
import { formatTolerance } from "../../words/formatTolerance";
import { formatTable } from "../formatTable";
import { figure, words } from "./finTables";

type Finset = NonNullable<Plan["finset"]>;

/** The fins as they were measured: how far each is out, whether that is within the tolerance, and the smallest correction. */
export function asSetLines(finset: Finset, reader: Reader): readonly string[] {
  const { asSet, asSetPairs, toleranceM } = finset;
  if (asSet.length === 0) return [];
  const show = (valueM: number | null): string =>
    valueM === null ? "-" : showQuantity(length(valueM, "fine"), reader);
  const turn = (valueRad: number | null): string =>
    valueRad === null ? "-" : showQuantity(angle(valueRad), reader);
  const tolerance = formatTolerance(toleranceM, reader);
  return [
    ...formatTable(
      [
        words("as set"),
        words("on"),
        figure("trailing out"),
        figure("leading out"),
        figure("toe by"),
        figure("cant by"),
        words(`within ${tolerance}`),
      ],
      asSet.map((fin) => [
        fin.id,
        fin.on ?? "-",
        show(fin.trailingErrorM),
        show(fin.leadingErrorM),
        turn(fin.toeErrorRad),
        turn(fin.cantErrorRad),
        fin.withinTolerance ? "yes" : `NO: ${correctionWords(fin.correction, reader)}`,
      ]),
    ),
    ...(asSetPairs.length === 0
      ? []
      : [
          "",
          ...formatTable(
            [
              words("left less right as set"),
              figure("trailing"),
              figure("leading"),
              figure("along"),
              figure("toe"),
              words(`within ${tolerance}`),
            ],
            asSetPairs.map((pair) => [
              pair.id,
              show(pair.trailingDifferM),
              show(pair.leadingDifferM),
              show(pair.alongDifferM),
              turn(pair.toeDifferRad),
              pair.withinTolerance ? "yes" : "NO",
            ]),
          ),
        ]),
  ];
}
