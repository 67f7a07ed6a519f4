import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";

export type SkinFace = "deck" | "bottom";

/** What lies on a face by the record, from the foam outwards. */
export interface LaidCoats {
  readonly laminate: boolean;
  readonly fill: boolean;
  readonly gloss: boolean;
}

/** The coats whose step is marked done. */
export function laidCoats({ steps }: Pick<Plan, "steps">, face: SkinFace): LaidCoats {
  const isLaid = (kind: string) => (steps ?? []).some(({ coat, done }) => done && coat === `${kind}-${face}`);
  return { laminate: isLaid("laminate"), fill: isLaid("fill"), gloss: isLaid("gloss") };
}

/** How far the skin is, for whoever cannot see it drawn: `deck: bare foam; bottom: glass and fill coat`. */
export function laidSentence(plan: Pick<Plan, "steps">, reader: Reader): string {
  const t = tell(reader);
  return t`deck: ${faceWords(laidCoats(plan, "deck"), reader)}; bottom: ${faceWords(laidCoats(plan, "bottom"), reader)}`;
}

function faceWords({ laminate, fill, gloss }: LaidCoats, reader: Reader): string {
  const t = tell(reader);
  if (gloss) return t`glass, fill coat and gloss coat`;
  if (fill) return t`glass and fill coat`;
  return laminate ? t`glass` : t`bare foam`;
}
