import type { Plan } from "@lapline/engine";
import { costSentences, costWords, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { AmountText } from "../shared/AmountText";
import { FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";

/** What the materials cost by line, what to buy in whole packs, what goes to waste and what is left over. */
export function CostView({ cost }: { cost: NonNullable<Plan["cost"]> }) {
  const { reader } = useSettings();
  const t = tell(reader);
  // In both systems resin, wax and cloth are weighed, measured and sold by the gram, the litre and the metre.
  const lines = costWords(cost, { ...reader, units: "mm" });
  return (
    <Fold title={t`Cost`}>
      {costSentences(cost, reader).map((sentence) => (
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
          cells: [line.takes, line.wasted, line.buy, line.left, line.cost].map((text, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a cell is known by its column
            <AmountText key={i} text={text} />
          )),
        }))}
      />
    </Fold>
  );
}
