import { useCallback, useMemo, useState } from "react";
import { useAfterTyping } from "../board/useAfterTyping";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { Fractions } from "../shared/Fractions";
import { COLOURING_IDS, type ColouringId } from "./Colouring";
import { listColourings } from "./colourings";
import { placeWords } from "./placeWords";
import { SolidLegend } from "./SolidLegend";
import type { SolidPlace } from "./SolidPlace";
import type { SolidProps } from "./SolidProps";
import { SolidStage } from "./SolidStage";
import { SolidTable } from "./SolidTable";
import { useMesh } from "./useMesh";

/** The board as a solid with one value of the plan in colour: scale, the value at the touched place, and all of it as a table. */
export default function SolidScreen({ plan, survey, first }: SolidProps) {
  const t = useTell();
  const { reader } = useSettings();
  const [chosen, setChosen] = useState<ColouringId>(first);
  const [touched, setTouched] = useState<SolidPlace | null>(null);
  const [isMissing, setMissing] = useState(false);
  const miss = useCallback(() => setMissing(true), []);
  const [detail, setDetail] = useState<"coarse" | "fine">("coarse");
  const mesh = useMesh(useAfterTyping(survey), detail, miss);
  const known = useMemo(() => listColourings(plan), [plan]);
  const colouring = known.find(({ id }) => id === chosen) ?? known[0];
  const { shape } = plan;
  if (shape === null || colouring === undefined) return null;
  return (
    <div className="solid">
      <Choice<ColouringId>
        label={t`In colour`}
        value={colouring.id}
        choices={COLOURING_IDS.filter((id) => known.some((each) => each.id === id))}
        names={{ difference: t`left against right`, film: t`film left`, skin: t`thickness of the skin` }}
        choose={setChosen}
      />
      {isMissing ? (
        <p className="says">{t`This browser draws no solids (WebGL is missing or turned off): the table has every value.`}</p>
      ) : (
        <>
          <SolidStage
            mesh={mesh}
            shape={shape}
            colouring={colouring}
            touch={setTouched}
            drawn={() => setDetail("fine")}
            miss={miss}
          />
          <p className="solid-told" aria-live="polite">
            {touched === null ? (
              t`Touch the board for the number there.`
            ) : (
              <Fractions text={placeWords(colouring, touched, { plan, reader })} />
            )}
          </p>
          <SolidLegend colouring={colouring} />
        </>
      )}
      <SolidTable plan={plan} colouring={colouring} isOpen={isMissing} />
    </div>
  );
}
