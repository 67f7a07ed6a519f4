import { count, fraction, length, type Plan } from "@lapline/engine";
import { buildNestOrders } from "@lapline/nest";
import { type CutStep, cutSteps, layOfRoll, repairCutSentences, tell } from "@lapline/present";
import { useMemo } from "react";
import { PartSection } from "../board/PartSection";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";
import { LayDrawing, NestView } from "./NestView";

type Roll = NonNullable<Plan["cutplan"]>["rolls"][number];
type Layup = NonNullable<Plan["layup"]>;

/** What to buy of each cloth, the pieces on the roll, and the cuts in order. */
export function CutPart({ plan }: { plan: Plan }) {
  const { cutplan, layup } = plan;
  const orders = useMemo(() => buildNestOrders([{ name: plan.name, plan }]), [plan]);
  return (
    <PartSection id="cut" findings={plan.findings}>
      {layup !== null &&
        cutplan?.rolls.map((roll) => {
          const order = orders.find(({ cloth }) => cloth === roll.cloth);
          return (
            <section key={roll.id} className="roll" aria-labelledby={`roll-${roll.id}`}>
              <RollView roll={roll} layup={layup} />
              {order !== undefined && order.pieces.length > 1 && <NestView order={order} />}
            </section>
          );
        })}
      {cutplan !== null && cutplan.repairs.length > 0 && <RepairCuts repairs={cutplan.repairs} />}
    </PartSection>
  );
}

/** The repairs' patches, apart from the order, whose cuts they leave as they were. */
function RepairCuts({ repairs }: { repairs: NonNullable<Plan["cutplan"]>["repairs"] }) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <section className="roll" aria-labelledby="roll-repairs">
      <h3 id="roll-repairs">{t`For the repairs`}</h3>
      {repairs.map((cut) => (
        <div key={cut.id}>
          {repairCutSentences(cut, reader).map((sentence) => (
            <p key={sentence} className="cut-how">
              <Fractions text={sentence} />
            </p>
          ))}
        </div>
      ))}
    </section>
  );
}

function RollView({ roll, layup }: { roll: Roll; layup: Layup }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const lay = useMemo(() => layOfRoll(roll, layup), [roll, layup]);
  const steps = cutSteps(roll, layup, reader);
  const at = `cutplan.rolls[${roll.id}]`;
  return (
    <>
      <h3 id={`roll-${roll.id}`}>{roll.cloth}</h3>
      <Figures
        entries={[
          { name: t`buy`, of: length(roll.lengthM), why: `${at}.lengthM` },
          { name: t`roll's width`, of: length(roll.widthM), why: `${at}.widthM`, minor: true },
          {
            name: t`ends up on the board`,
            of: fraction(roll.usedRatio),
            why: `${at}.usedRatio`,
            minor: true,
          },
          ...(roll.cost === null
            ? []
            : [{ name: t`cloth for`, of: count(roll.cost), why: `${at}.cost`, minor: true }]),
        ]}
      />
      <LayDrawing lay={lay} title={t`${roll.cloth} on its roll`} />
      <ol className="cut-list">
        {steps.map((step) => (
          <Cut key={step.id} step={step} roll={roll.id} />
        ))}
      </ol>
    </>
  );
}

function Cut({ step, roll }: { step: CutStep; roll: string }) {
  const t = tell(useSettings().reader);
  return (
    <li>
      <p className="cut-off">
        <span className="cut-name">{t`cut ${step.number}`}</span>
        <span className="cut-length">
          <Amount of={length(step.lengthM)} why={`cutplan.rolls[${roll}].cuts[${step.id}].lengthM`} />
        </span>
        <span>{step.pieces.join(", ")}</span>
      </p>
      {step.sentences.map((sentence) => (
        <p key={sentence} className="cut-how">
          <Fractions text={sentence} />
        </p>
      ))}
    </li>
  );
}
