import { mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";

type Weight = NonNullable<Plan["weight"]>;

/** What the board floats: the water it pushes aside, what it carries, and what the rider leaves of that. */
export function floatSentences({ float, finishedKg }: Weight, reader: Reader): readonly string[] {
  const t = tell(reader);
  const { displacesKg, carriesKg, carriesLowKg, carriesHighKg, riderKg, reserveKg } = float;
  const carries = t`Just under still sea water it pushes ${mass(displacesKg)} of water aside, weighs ${mass(finishedKg)} of that itself and carries ${mass(carriesKg)} (${mass(carriesLowKg)} to ${mass(carriesHighKg)}).`;
  if (riderKg === null || reserveKg === null) return [carries];
  const under =
    reserveKg < 0
      ? t`A rider of ${mass(riderKg)} is ${mass(-reserveKg)} more than that: standing still, board and rider sink until so much of the rider is under water.`
      : t`A rider of ${mass(riderKg)} leaves ${mass(reserveKg)} in hand.`;
  return [carries, under, t`Skin, fins, wetsuit and the lift of a moving board are left out.`];
}
