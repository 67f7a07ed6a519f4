import type { BoardFile } from "@lapline/contract";
import { duration, fraction, type Plan, type SurveyInput } from "@lapline/engine";
import {
  filmDrawing,
  filmFigure,
  repairTitle,
  riskWord,
  sandRows,
  sandRules,
  tell,
  worstSentence,
  zoneName,
} from "@lapline/present";
import { useCallback } from "react";
import { PartSection } from "../board/PartSection";
import type { FieldPath } from "../board/withField";
import { FilmBarsView } from "../charts/FilmBarsView";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fractions } from "../shared/Fractions";
import { SolidFold } from "../solid/SolidFold";
import { WhyNumber } from "../why/WhyNumber";
import { DustForm } from "./DustForm";
import { FilmForm } from "./FilmForm";
import { GritLadder } from "./GritLadder";
import { ThroughForm } from "./ThroughForm";

const FILMS = ["filmM", "takenM", "remainingM", "remainingLowM", "remainingHighM"] as const;

interface SandPartProps {
  readonly file: BoardFile;
  readonly plan: Plan;
  readonly survey: SurveyInput;
  edit(path: FieldPath, value: unknown): void;
}

type Sanding = NonNullable<Plan["sanding"]>;

/** Narrower than this the board stands on the sheet instead of lying. */
const LIES_FROM_MM = 150;

/** The film as a budget on the board, the ladder of papers, and what to do where it went through. */
export function SandPart({ file, plan, survey, edit }: SandPartProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { sanding, repairs } = plan;
  return (
    <PartSection id="sand" findings={plan.findings}>
      {sanding !== null && (
        <>
          <FilmLeft plan={plan} sanding={sanding} />
          <SolidFold plan={plan} survey={survey} first="film" />
          <h3>{t`Papers`}</h3>
          <GritLadder sanding={sanding} />
          <ul className="under-table">
            {sandRules(reader).map((rule) => (
              <li key={rule}>{rule}</li>
            ))}
          </ul>
        </>
      )}
      {sanding !== null && (
        <>
          <h3>{t`Film gauged`}</h3>
          <FilmForm file={file} sanding={sanding} edit={edit} />
          <h3>{t`Dust weighed`}</h3>
          <DustForm file={file} sanding={sanding} edit={edit} />
        </>
      )}
      <h3>{t`Sanded through`}</h3>
      {repairs !== null && repairs.length > 0 && (
        <ul className="under-table">
          {repairs.map((repair) => (
            <li key={repair.id}>
              <a href="#seal">
                <Fractions text={repairTitle(repair, reader)} />
              </a>
            </li>
          ))}
        </ul>
      )}
      <ThroughForm file={file} edit={edit} />
    </PartSection>
  );
}

function FilmLeft({ plan, sanding }: { plan: Plan; sanding: Sanding }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const draw = useCallback(
    (widthMm: number) => filmDrawing(plan, { reader, widthMm, stands: widthMm < LIES_FROM_MM }),
    [plan, reader],
  );
  const worst = worstSentence(sanding, reader);
  return (
    <>
      {worst !== null && (
        <p className="says">
          <Fractions text={worst} />
        </p>
      )}
      <SheetDrawing
        title={t`${plan.name}, film left`}
        desc={t`The deck with the film that the papers leave; the figures by zone stand in the table below.`}
        draw={draw}
        zooms
      />
      <FactTable
        caption={t`Film by zone in µm, first where it goes through first`}
        heads={[t`zone`, t`film`, t`taken`, t`remains`, t`from`, t`to`, t`gone in`]}
        rows={sandRows(sanding.zones).map((zone) => ({
          id: zone.id,
          name: `${zoneName(zone.id, reader)}: ${riskWord(zone.risk, reader)}`,
          cells: [
            ...FILMS.map((key) => (
              <WhyNumber key={key} path={`sanding.zones[${zone.id}].${key}`}>
                {filmFigure(zone[key], reader)}
              </WhyNumber>
            )),
            <Amount
              key="gone"
              of={fraction(zone.throughShare)}
              why={`sanding.zones[${zone.id}].throughShare`}
            />,
          ],
        }))}
      />
      <FilmBarsView plan={plan} />
      <p>
        {t`Hands on, all papers:`}{" "}
        <Amount of={duration(sanding.work.reduce((sumS, work) => sumS + work.handsOnS, 0))} />
      </p>
    </>
  );
}
