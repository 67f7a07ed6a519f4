import { count, type Plan } from "@lapline/engine";
import { costSentences, costWords, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { AmountText } from "../shared/AmountText";
import { FactTable } from "../shared/FactTable";
import { Figures } from "../shared/Figures";
import { Fold } from "../shared/Fold";
import { WhyNumber } from "../why/WhyNumber";

const CELLS = ["takes", "wasted", "buy", "left", "cost"] as const;

/** What the materials cost by line, what to buy in whole packs, what goes to waste and what is left over. */
export function CostView({ cost }: { cost: NonNullable<Plan["cost"]> }) {
  const { reader } = useSettings();
  const t = tell(reader);
  // In both systems resin, wax and cloth are weighed, measured and sold by the gram, the litre and the metre.
  const lines = costWords(cost, { ...reader, units: "mm" });
  const sentences = costSentences(cost, reader);
  return (
    <Fold title={t`Cost`}>
      {sentences.length > 0 && (
        <Figures
          entries={[
            { name: t`cost`, of: count(cost.materials), why: "cost.materials", minor: true },
            { name: t`in whole packs`, of: count(cost.toBuy), why: "cost.toBuy", minor: true },
          ]}
        />
      )}
      {sentences.map((sentence) => (
        <p key={sentence} className="says">
          {sentence}
        </p>
      ))}
      <FactTable
        caption={t`Materials of this board`}
        heads={[t`material`, t`this board takes`, t`wasted`, t`to buy`, t`left over`, t`cost`]}
        rows={lines.map((line) => ({
          id: line.id,
          name: line.name,
          cells: CELLS.map((cell) => (
            <WhyNumber key={cell} path={line.why[cell]}>
              <AmountText text={line[cell]} />
            </WhyNumber>
          )),
        }))}
      />
    </Fold>
  );
}
