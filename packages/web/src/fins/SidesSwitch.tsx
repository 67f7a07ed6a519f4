import { length } from "@lapline/engine";
import { setOutWords } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Fold } from "../shared/Fold";
import type { FinsForm } from "./FinsForm";
import { findingsAt } from "./findingsAt";
import { SidesTable } from "./SidesTable";

const RULES = ["average", "rail", "centreline"] as const;

/** The rule for the two sides, what each choice does to the marks, and which one suits the board. */
export function SidesSwitch({ form }: { form: FinsForm }) {
  const { plan, fins, edit } = form;
  const { finset } = plan;
  const { units } = useSettings();
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
        {RULES.map((rule) => {
          const outM = finset?.sidesCompared.find(({ id }) => id === rule)?.asymmetryM;
          return (
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
                <small>
                  {finset?.recommendedSides === rule && hasPairs ? "recommended, " : ""}
                  {outM === undefined ? (
                    ""
                  ) : (
                    <>
                      rails differ <Amount of={length(outM, "fine")} />
                    </>
                  )}
                </small>
              </span>
            </label>
          );
        })}
      </fieldset>
      {finset !== null && <p className="says">{setOutWords(finset, units)}</p>}
      {finset !== null && hasPairs && (
        <Fold title="What each rule comes to">
          <SidesTable finset={finset} />
        </Fold>
      )}
    </>
  );
}
