import type { BoardFile } from "@lapline/contract";
import { ARRANGEMENTS, listMaterials } from "@lapline/engine";
import { useId } from "react";
import { FindingTape } from "../board/FindingTape";
import { QuantityField } from "../board/QuantityField";
import { arrangementNames } from "../fins/arrangementNames";
import { MaterialChoice } from "../glass/MaterialChoice";
import { TypedField } from "../glass/TypedField";
import type { PlanRead } from "../plan/GoodBoard";
import { planner } from "../plan/tabPlanner";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { choiceHarms } from "./choiceHarms";
import type { Answers } from "./startingFile";
import { usePlanned } from "./usePlanned";

interface ThreeQuestionsProps {
  readonly answers: Answers;
  /** The board that the answers make. */
  readonly begun: BoardFile;
  /** A survey that came as a table, in place of empty stations. */
  readonly table: BoardFile["survey"] | null;
  change(some: Partial<Answers>): void;
  keep(file: BoardFile): void;
  /** Where it could not even be looked at. */
  fail(why: unknown): void;
}

const LATER = "later";
const known = listMaterials(undefined);

/** Length, arrangement, foam and resin; what cannot be is said before the board is made. */
export function ThreeQuestions({ answers, begun, table, change, keep, fail }: ThreeQuestionsProps) {
  const t = useTell();
  const id = useId();
  const text = JSON.stringify(begun);
  const read = usePlanned(text);
  const isAsked = answers.length.trim() !== "";
  const problem = read === null || read.ok ? undefined : read.problems[0]?.says;
  const harms = read === null ? [] : choiceHarms(read);
  // The plan of the last key may still be on its way.
  const keepChecked = () => planner.plan(text).then((now) => canKeep(now) && keep(begun), fail);
  return (
    <form
      className="questions"
      aria-labelledby={id}
      onSubmit={(event) => {
        event.preventDefault();
        void keepChecked();
      }}
    >
      <h2 id={id}>{t`Three questions`}</h2>
      <fieldset className="question">
        <legend>{t`How long is it?`}</legend>
        <QuantityField
          label={t`length`}
          value={answers.length}
          problem={isAsked ? problem : undefined}
          onType={(length) => change({ length })}
        />
        <p className="how">
          {table === null
            ? stationsWords(begun.survey.stations.length, t)
            : t`${table.stations.length} stations with their readings come from the table.`}
        </p>
      </fieldset>
      <fieldset className="question">
        <legend>{t`Which fins?`}</legend>
        <Choice
          label={t`arrangement`}
          value={answers.arrangement ?? LATER}
          choices={[...ARRANGEMENTS, LATER]}
          names={{ ...arrangementNames(t), [LATER]: t`decide later` }}
          choose={(chosen) => change({ arrangement: chosen === LATER ? null : chosen })}
        />
        <p className="how">{t`Their numbers come after the outline: from a set on the board's page, or your own.`}</p>
      </fieldset>
      <fieldset className="question">
        <legend>{t`Which foam, and which resin?`}</legend>
        <div className="fields">
          <MaterialChoice
            label={t`foam`}
            value={answers.foam}
            from={known.foams.map((each) => ({ ...each, name: foamName(each.id, t) }))}
            choose={(foam) => foam !== undefined && change({ foam })}
          />
          <MaterialChoice
            label={t`resin`}
            value={answers.resin}
            from={known.resins}
            choose={(resin) => resin !== undefined && change({ resin })}
          />
        </div>
        <div role="status" className="tapes">
          {harms.map((finding) => (
            <FindingTape key={`${finding.code} ${finding.path}`} finding={finding} />
          ))}
        </div>
      </fieldset>
      <fieldset className="question">
        <legend>{t`What is it called?`}</legend>
        <TypedField label={t`name`} value={answers.name} onType={(typed) => change({ name: typed })} />
        {answers.name.trim() === "" && isAsked && <p className="how">{t`Left empty: ${begun.name}`}</p>}
      </fieldset>
      <p className="form-acts">
        <button
          type="submit"
          className="go"
          aria-disabled={read === null || !canKeep(read)}
        >{t`Put it in the Shed`}</button>
        {!isAsked && <span className="how">{t`The length comes first.`}</span>}
      </p>
    </form>
  );
}

/** What cannot be is said before the board is made. */
const canKeep = (read: PlanRead): boolean => read.ok && choiceHarms(read).length === 0;

/** What a foam's id says: its kind and its kilograms to the cubic metre. */
function foamName(foam: string, t: ReturnType<typeof useTell>): string {
  const [kind = "", density = ""] = foam.split("-");
  const kinds: Readonly<Record<string, string>> = {
    pu: t`polyurethane`,
    eps: t`expanded polystyrene`,
    xps: t`extruded polystyrene`,
  };
  return kinds[kind] === undefined ? foam : `${kinds[kind]}, ${density} kg/m³`;
}

function stationsWords(count: number, t: ReturnType<typeof useTell>): string {
  return count === 0
    ? t`By tape along the bottom, with its unit.`
    : t`${count} places to hold the tape are suggested; their readings stay empty until you take them.`;
}
