import { angle, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { formatTapeLength } from "./formatTapeLength";

type Mark = NonNullable<Plan["finset"]>["marks"][number];

const MM_M = 0.001;

/** What a millimetre is worth in toe at each point a fin can be set by, and why the string is used. */
export interface WorthWords {
  readonly name: string;
  readonly turns: string;
}

/** In the order in which they matter: one end of the base first, where a millimetre turns the fin most. */
export function worthWords({ worth, rounding }: Mark, reader: Reader): readonly WorthWords[] {
  const t = tell(reader);
  const turns = (radPerM: number): string => showTurn(radPerM * MM_M, reader);
  const tape = rounding.find(({ id }) => id === reader.units);
  const step = tape === undefined ? "" : formatTapeLength(tape.stepM, reader);
  return [
    { name: t`1 mm at one end of the base`, turns: turns(worth.baseEndRadPerM) },
    { name: t`1 mm across at the trailing mark, string held`, turns: turns(worth.trailingAcrossRadPerM) },
    { name: t`1 mm at the string's nose end`, turns: turns(worth.noseEndRadPerM) },
    ...(tape === undefined
      ? []
      : [
          { name: t`both marks rounded to ${step}`, turns: showTurn(tape.byMarksRad, reader) },
          { name: t`mark and string rounded to ${step}`, turns: showTurn(tape.byStringRad, reader) },
        ]),
  ];
}

function showTurn(turnRad: number, reader: Reader): string {
  return showQuantity(angle(Math.abs(turnRad), "fine"), reader);
}
