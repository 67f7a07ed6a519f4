import { formatQuantity, length, SIDES_RULES, type SidesRule } from "@lapline/engine";
import { setOutWords } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { Fold } from "../shared/Fold";
import { Fractions } from "../shared/Fractions";
import type { Finset, FinsForm } from "./FinsForm";
import { findingsAt } from "./findingsAt";
import { SidesTable, STAYS_M } from "./SidesTable";

/** The rule for the two sides, what each choice does to the marks, and which one suits the board. */
export function SidesSwitch({ form }: { form: FinsForm }) {
  const { plan, fins, edit } = form;
  const { finset } = plan;
  const { reader } = useSettings();
  const inForce = fins.sides ?? "average";
  const hasPairs = finset?.pairs.length !== 0;
  return (
    <>
      <h3>Sides</h3>
      {findingsAt(plan, "fins.sides").map((finding) => (
        <FindingTape key={finding.code} finding={finding} />
      ))}
      <fieldset className="switch sides-switch">
        <legend className="unseen">Sides set out by</legend>
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
              {rule}
              <small>{finset === null || !hasPairs ? "" : describeRule(finset, rule)}</small>
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
        <Fold title="What each rule comes to" isFolded>
          <SidesTable finset={finset} />
        </Fold>
      )}
    </>
  );
}

/** Whether a rule suits the board, and how far it would move a mark at most; in millimetres in both systems. */
function describeRule(finset: Finset, rule: SidesRule): string {
  const pairs = finset.sidesCompared.find(({ id }) => id === rule)?.pairs ?? [];
  const moves = pairs.flatMap(({ leftMovesM, rightMovesM }) => [Math.abs(leftMovesM), Math.abs(rightMovesM)]);
  const mostM = Math.max(0, ...moves);
  const does =
    rule === finset.sides
      ? "in force"
      : mostM < STAYS_M
        ? "moves nothing"
        : `moves ${formatQuantity(length(mostM, "fine"), "mm")} at most`;
  return finset.recommendedSides === rule ? `recommended, ${does}` : does;
}
