import { length, SIDES_RULES, type SidesRule } from "@lapline/engine";
import { type Reader, setOutWords, showQuantity, tell, tellText } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fold } from "../shared/Fold";
import { Fractions } from "../shared/Fractions";
import type { Finset, FinsForm } from "./FinsForm";
import { findingsAt } from "./findingsAt";
import { SidesTable, STAYS_M } from "./SidesTable";

/** The rule for the two sides, what each choice does to the marks, and which one suits the board. */
export function SidesSwitch({ form }: { form: FinsForm }) {
  const t = useTell();
  const { plan, fins, edit } = form;
  const { finset } = plan;
  const { reader } = useSettings();
  const inForce = fins.sides ?? "average";
  const hasPairs = finset?.pairs.length !== 0;
  return (
    <>
      <h3>{t`Sides`}</h3>
      {findingsAt(plan, "fins.sides").map((finding) => (
        <FindingTape key={finding.code} finding={finding} />
      ))}
      <fieldset className="switch sides-switch">
        <legend className="unseen">{t`Sides set out by`}</legend>
        {SIDES_RULES.map((rule) => (
          <label key={rule}>
            <input
              type="radio"
              name="fins-sides"
              value={rule}
              checked={inForce === rule}
              onChange={() => edit(["fins", "sides"], rule)}
            />
            <span>
              {tellText(rule, reader)}
              <small>{finset === null || !hasPairs ? "" : describeRule(finset, rule, reader)}</small>
            </span>
          </label>
        ))}
      </fieldset>
      {finset !== null && (
        <p className="says">
          <Fractions text={setOutWords(finset, reader)} />
        </p>
      )}
      {finset !== null && hasPairs && (
        <Fold title={t`What each rule comes to`} isFolded>
          <SidesTable finset={finset} />
        </Fold>
      )}
    </>
  );
}

/** Whether a rule suits the board, and how far it would move a mark at most; in millimetres in both systems. */
function describeRule(finset: Finset, rule: SidesRule, reader: Reader): string {
  const t = tell(reader);
  const pairs = finset.sidesCompared.find(({ id }) => id === rule)?.pairs ?? [];
  const moves = pairs.flatMap(({ leftMovesM, rightMovesM }) => [Math.abs(leftMovesM), Math.abs(rightMovesM)]);
  const mostM = Math.max(0, ...moves);
  const does =
    rule === finset.sides
      ? t`in force`
      : mostM < STAYS_M
        ? t`moves nothing`
        : t`moves ${showQuantity(length(mostM, "fine"), { ...reader, units: "mm" })} at most`;
  return finset.recommendedSides === rule ? t`recommended, ${does}` : does;
}
