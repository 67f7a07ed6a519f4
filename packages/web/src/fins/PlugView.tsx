import { duration, length, mass, type Plan } from "@lapline/engine";
import {
  finName,
  formatTapeLength,
  type Reader,
  readNoLoadS,
  tailWord,
  tell,
  tellText,
} from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { type FigureEntry, Figures } from "../shared/Figures";
import { Said } from "../shared/Said";
import { FinsField, problemAt } from "./FinsField";
import type { Finset, FinsForm } from "./FinsForm";
import { findingsAt } from "./findingsAt";
import { statedTail } from "./statedTail";

type Plug = NonNullable<Finset["leashPlug"]>;

/** The leash plug on the deck: where it goes, what is around it, and when it may be pulled. */
export function PlugView({ form }: { form: FinsForm }) {
  const t = useTell();
  const { fins, plan, edit } = form;
  const plug = plan.finset?.leashPlug ?? null;
  return (
    <>
      <h3>{t`Leash plug`}</h3>
      {findingsAt(plan, "fins.leashPlug").map((finding) => (
        <FindingTape key={`${finding.code} ${finding.path}`} finding={finding} />
      ))}
      {fins.leashPlug === undefined ? (
        <p>
          {t`No leash plug.`}{" "}
          <button
            type="button"
            className="plain"
            onClick={() => edit(["fins", "leashPlug"], { fromTail: "", fromCentreline: "" })}
          >{t`give it one`}</button>
        </p>
      ) : (
        <PlugFields form={form} />
      )}
      {plan.finset !== null && plug !== null && fins.leashPlug !== undefined && (
        <PlugFacts plug={plug} plan={plan} finset={plan.finset} />
      )}
    </>
  );
}

const FIELDS = [
  { field: "fromTail", label: "from the", optional: false },
  { field: "fromCentreline", label: "from the centreline", optional: false },
  { field: "diameter", label: "plug, across", optional: true },
  { field: "depth", label: "plug, deep", optional: true },
] as const;

function PlugFields({ form }: { form: FinsForm }) {
  const { reader } = useSettings();
  const t = useTell();
  const { fins, edit } = form;
  const whole = problemAt(form, ["leashPlug"]);
  const tail = statedTail(form);
  return (
    <fieldset className="fin">
      <legend className="unseen">{t`Leash plug`}</legend>
      {whole !== undefined && (
        <p className="field-problem">
          <Said says={whole} />
        </p>
      )}
      <div className="fields">
        {FIELDS.map(({ field, label, optional }) => (
          <FinsField
            key={field}
            form={form}
            label={field === "fromTail" ? t`from the ${tail}` : tellText(label, reader)}
            path={["leashPlug", field]}
            value={fins.leashPlug?.[field]}
            optional={optional}
          />
        ))}
        <Choice
          label={t`side`}
          value={fins.leashPlug?.side ?? "left"}
          choices={["left", "right"]}
          choose={(side) => edit(["fins", "leashPlug", "side"], side)}
        />
      </div>
      <button type="button" className="plain" onClick={() => edit(["fins", "leashPlug"], undefined)}>
        {t`remove`}
        <span className="unseen"> {t`the leash plug`}</span>
      </button>
    </fieldset>
  );
}

function PlugFacts({ plug, plan, finset }: { plug: Plug; plan: Plan; finset: Finset }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const tape = (lengthM: number) => formatTapeLength(lengthM, reader);
  const tail = tailWord(finset.line);
  return (
    <>
      <p>
        {plug.fromCrotchTapeM === null
          ? t`On the deck, ${plug.side}: ${tape(plug.fromTailTapeM)} from the ${tail}, ${tape(plug.fromCentrelineM)} from the line.`
          : t`On the deck, ${plug.side}: ${tape(plug.fromTailTapeM)} from the ${tail}, ${tape(plug.fromCrotchTapeM)} from the crotch, ${tape(plug.fromCentrelineM)} from the line.`}
      </p>
      <Figures entries={roomEntries(plug, reader)} />
      <p>
        {t`No load for ${duration(readNoLoadS(plan, "leash-plug", plug.cureBeforeLoadS))}, or as the resin's sheet asks where that is longer. Then pull it straight up with the weight of ${{ ...mass(plug.pullTestMassKg), grain: "coarse" as const }}: a plug that was never pulled is not ready, and a lost board can drown somebody.`}
      </p>
    </>
  );
}

function roomEntries(plug: Plug, reader: Reader): FigureEntry[] {
  const t = tell(reader);
  const beside = plug.box === null ? t`to the next box` : t`to the ${finName(plug.box, reader)} box`;
  const beneath =
    plug.boxBeneath === null ? t`to the box beneath` : t`down to the ${finName(plug.boxBeneath, reader)} box`;
  type Room =
    | "foamUnderM"
    | "toBoxM"
    | "foamToBoxM"
    | "toRailM"
    | "toStringerM"
    | "mostDepthM"
    | "patchDiameterM";
  const entries: ReadonlyArray<readonly [string, Room]> = [
    [t`foam under it`, "foamUnderM"],
    [beside, "toBoxM"],
    [beneath, "foamToBoxM"],
    [t`to the rail`, "toRailM"],
    [t`to the stringer`, "toStringerM"],
    [t`deepest plug here`, "mostDepthM"],
    [t`cloth over it, across`, "patchDiameterM"],
  ];
  return entries.flatMap(([name, key]) => {
    const valueM = plug[key];
    return valueM === null ? [] : [{ name, of: length(valueM), why: `finset.leashPlug.${key}` }];
  });
}
