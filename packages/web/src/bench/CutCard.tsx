import { length, type Plan } from "@lapline/engine";
import { cutSteps, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";
import type { BenchCard } from "./BenchCard";

/** One cut off one roll: how long, and what is done with it. */
export function CutCard({ plan, card }: { plan: Plan; card: Extract<BenchCard, { kind: "cut" }> }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const roll = plan.cutplan?.rolls.find(({ id }) => id === card.roll);
  if (roll === undefined || plan.layup === null) return null;
  const step = cutSteps(roll, plan.layup, reader).find(({ id }) => id === card.cut);
  if (step === undefined) return null;
  return (
    <>
      <Figures
        entries={[
          {
            name: t`cut ${step.number} of ${roll.cuts.length}, off ${roll.cloth}`,
            of: length(step.lengthM),
            why: `cutplan.rolls[${roll.id}].cuts[${step.id}].lengthM`,
          },
          {
            name: t`roll's width`,
            of: length(roll.widthM),
            why: `cutplan.rolls[${roll.id}].widthM`,
            minor: true,
          },
        ]}
      />
      <p className="card-names">{step.pieces.join(", ")}</p>
      {step.sentences.map((sentence) => (
        <p key={sentence}>
          <Fractions text={sentence} />
        </p>
      ))}
    </>
  );
}
