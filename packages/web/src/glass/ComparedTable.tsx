import { count, mass, type Plan } from "@lapline/engine";
import { comparisonLimits, scheduleLayers, scheduleName, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";

type Schedule = NonNullable<Plan["layup"]>["compared"][number];

/** Lighter and stronger schedules beside the board's own, as shares of it, with what the model leaves out. */
export function ComparedTable({ compared }: { compared: readonly Schedule[] }) {
  const { reader } = useSettings();
  const t = tell(reader);
  if (compared.length < 2) return null;
  type Ratio = "stiffnessRatio" | "deckWrinklingRatio" | "bottomWrinklingRatio";
  const share = (schedule: Schedule, key: Ratio) => {
    const ratio = schedule[key];
    return (
      <Amount
        key={key}
        of={ratio === null ? null : count(ratio)}
        why={`layup.compared[${schedule.id}].${key}`}
      />
    );
  };
  return (
    <Fold title={t`Lighter or stronger`} isFolded>
      <FactTable
        caption={t`Lighter or stronger`}
        captionUnseen
        heads={[t`schedule, bottom / deck`, t`skin`, t`stiff`, t`deck waves`, t`bottom waves`]}
        rows={compared.map((schedule) => ({
          id: schedule.id,
          name: (
            <>
              {scheduleName(schedule.id, reader)} <span className="quiet">{scheduleLayers(schedule)}</span>
            </>
          ),
          cells: [
            <Amount
              key="skin"
              of={mass(schedule.skinMassKg)}
              why={`layup.compared[${schedule.id}].skinMassKg`}
            />,
            share(schedule, "stiffnessRatio"),
            share(schedule, "deckWrinklingRatio"),
            share(schedule, "bottomWrinklingRatio"),
          ],
        }))}
      />
      <p className="quiet under-table">{comparisonLimits(reader)}</p>
    </Fold>
  );
}
