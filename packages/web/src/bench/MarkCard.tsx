import { angle, type Plan } from "@lapline/engine";
import { setOutWords, tailWord, tell } from "@lapline/present";
import type { ReactNode } from "react";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Fractions } from "../shared/Fractions";
import { TapeAmount } from "../shared/TapeAmount";
import type { MarkEnd } from "./BenchCard";

interface MarkCardProps {
  readonly plan: Plan;
  readonly fin: string;
  readonly end: MarkEnd;
}

/**
 * A fin's marks, or a pair's: the distance from the tail once, and from the line on both sides. They stand as the board lies:
 * bottom up and nose away, left on the right hand.
 */
export function MarkCard({ plan, fin, end }: MarkCardProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { finset } = plan;
  const marks = finset?.marks.filter((mark) => mark.fin === fin) ?? [];
  const [first] = marks;
  if (finset === null || first === undefined) return null;
  if (end === "stand") {
    const isCentre = first.side === "centre";
    return (
      <dl className="figures">
        {!isCentre && (
          <Fact
            name={t`string beside the nose`}
            of={<TapeAmount ofM={first.aimBesideNoseM} why={`finset.marks[${first.id}].aimBesideNoseM`} />}
          />
        )}
        <Fact
          name={t`length of the base`}
          of={<TapeAmount ofM={first.baseM} why={`finset.marks[${first.id}].baseM`} />}
        />
        <Fact
          name={t`cant`}
          of={<Amount of={angle(first.cantRad)} why={`finset.marks[${first.id}].cantRad`} />}
        />
      </dl>
    );
  }
  const [left, right] = ["left", "right"].map((side) => marks.find((mark) => mark.side === side));
  return (
    <>
      <dl className="figures">
        <Fact
          name={t`from the ${tailWord(finset.line)}, by tape`}
          of={
            <TapeAmount
              ofM={first[end].fromTailTapeM}
              why={`finset.marks[${first.id}].${end}.fromTailTapeM`}
            />
          }
        />
      </dl>
      {left !== undefined && right !== undefined ? (
        <>
          <p className="as-it-lies">{t`Bottom up, nose away: LEFT is on your right hand.`}</p>
          <dl className="figures both-sides">
            <Fact
              name={t`RIGHT, from the line`}
              of={
                <TapeAmount
                  ofM={right[end].fromCentrelineM}
                  why={`finset.marks[${right.id}].${end}.fromCentrelineM`}
                />
              }
            />
            <Fact
              name={t`LEFT, from the line`}
              of={
                <TapeAmount
                  ofM={left[end].fromCentrelineM}
                  why={`finset.marks[${left.id}].${end}.fromCentrelineM`}
                />
              }
            />
          </dl>
        </>
      ) : (
        <p className="as-it-lies">{t`On the line itself.`}</p>
      )}
      <p>
        <Fractions text={setOutWords(finset, reader)} />
      </p>
    </>
  );
}

function Fact({ name, of }: { name: string; of: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{of}</dd>
    </div>
  );
}
