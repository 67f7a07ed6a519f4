import { angle, length, type Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { tell } from "../../language/tell";
import { tellText } from "../../language/tellText";
import { correctionWords } from "../../words/correctionWords";
import { formatTolerance } from "../../words/formatTolerance";
import { formatTable } from "../formatTable";
import { figure, words } from "./finTables";

type Finset = NonNullable<Plan["finset"]>;

/** The fins as they were measured: how far each is out, whether that is within the tolerance, and the smallest correction. */
export function asSetLines(finset: Finset, reader: Reader): readonly string[] {
  const t = tell(reader);
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
        words(t`as set`),
        words(t`on`),
        figure(t`trailing out`),
        figure(t`leading out`),
        figure(t`toe by`),
        figure(t`cant by`),
        words(t`within ${tolerance}`),
      ],
      asSet.map((fin) => [
        tellText(fin.id, reader),
        tellText(fin.on ?? "-", reader),
        show(fin.trailingErrorM),
        show(fin.leadingErrorM),
        turn(fin.toeErrorRad),
        turn(fin.cantErrorRad),
        fin.withinTolerance ? t`yes` : t`NO: ${correctionWords(fin.correction, reader)}`,
      ]),
    ),
    ...(asSetPairs.length === 0
      ? []
      : [
          "",
          ...formatTable(
            [
              words(t`left less right as set`),
              figure(t`trailing`),
              figure(t`leading`),
              figure(t`along`),
              figure(t`toe`),
              words(t`within ${tolerance}`),
            ],
            asSetPairs.map((pair) => [
              tellText(pair.id, reader),
              show(pair.trailingDifferM),
              show(pair.leadingDifferM),
              show(pair.alongDifferM),
              turn(pair.toeDifferRad),
              pair.withinTolerance ? t`yes` : t`NO`,
            ]),
          ),
        ]),
  ];
}
