import { duration, length, mass, type Plan } from "@lapline/engine";
import { finName, readNoLoadS, tailWord } from "@lapline/present";
import { FindingTape } from "../board/FindingTape";
import { ENGLISH } from "../settings/english";
import { Amount } from "../shared/Amount";
import { Choice } from "../shared/Choice";
import { type FigureEntry, Figures } from "../shared/Figures";
import { TapeAmount } from "../shared/TapeAmount";
import { FinsField, problemAt } from "./FinsField";
import type { Finset, FinsForm } from "./FinsForm";
import { findingsAt } from "./findingsAt";
import { statedTail } from "./statedTail";

type Plug = NonNullable<Finset["leashPlug"]>;

/** The leash plug on the deck: where it goes, what is around it, and when it may be pulled. */
export function PlugView({ form }: { form: FinsForm }) {
  const { fins, plan, edit } = form;
  const plug = plan.finset?.leashPlug ?? null;
  return (
    <>
      <h3>Leash plug</h3>
      {findingsAt(plan, "fins.leashPlug").map((finding) => (
        <FindingTape key={`${finding.code} ${finding.path}`} finding={finding} />
      ))}
      {fins.leashPlug === undefined ? (
        <p>
          No leash plug.{" "}
          <button
            type="button"
            className="plain"
            onClick={() => edit(["fins", "leashPlug"], { fromTail: "", fromCentreline: "" })}
          >
            give it one
          </button>
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
  const { fins, edit } = form;
  const whole = problemAt(form, ["leashPlug"]);
  const tail = statedTail(form);
  return (
    <fieldset className="fin">
      <legend className="unseen">Leash plug</legend>
      {whole !== undefined && <p className="field-problem">{whole}</p>}
      <div className="fields">
        {FIELDS.map(({ field, label, optional }) => (
          <FinsField
            key={field}
            form={form}
            label={field === "fromTail" ? `${label} ${tail}` : label}
            path={["leashPlug", field]}
            value={fins.leashPlug?.[field]}
            optional={optional}
          />
        ))}
        <Choice
          label="side"
          value={fins.leashPlug?.side ?? "left"}
          choices={["left", "right"]}
          choose={(side) => edit(["fins", "leashPlug", "side"], side)}
        />
      </div>
      <button type="button" className="plain" onClick={() => edit(["fins", "leashPlug"], undefined)}>
        remove<span className="unseen"> the leash plug</span>
      </button>
    </fieldset>
  );
}

function PlugFacts({ plug, plan, finset }: { plug: Plug; plan: Plan; finset: Finset }) {
  return (
    <>
      <p>
        On the deck, {plug.side}: <TapeAmount ofM={plug.fromTailTapeM} /> from the {tailWord(finset.line)},{" "}
        {plug.fromCrotchTapeM !== null && (
          <>
            <TapeAmount ofM={plug.fromCrotchTapeM} /> from the crotch,{" "}
          </>
        )}
        <TapeAmount ofM={plug.fromCentrelineM} /> from the line.
      </p>
      <Figures entries={roomEntries(plug)} />
      <p>
        No load for <Amount of={duration(readNoLoadS(plan, "leash-plug", plug.cureBeforeLoadS))} />, or as the
        resin's sheet asks where that is longer. Then pull it straight up with the weight of{" "}
        <Amount of={{ ...mass(plug.pullTestMassKg), grain: "coarse" }} />: a plug that was never pulled is not
        ready, and a lost board can drown somebody.
      </p>
    </>
  );
}

function roomEntries(plug: Plug): FigureEntry[] {
  const beside = plug.box === null ? "to the next box" : `to the ${finName(plug.box, ENGLISH)} box`;
  const beneath =
    plug.boxBeneath === null ? "to the box beneath" : `down to the ${finName(plug.boxBeneath, ENGLISH)} box`;
  const entries: ReadonlyArray<readonly [string, number | null]> = [
    ["foam under it", plug.foamUnderM],
    [beside, plug.toBoxM],
    [beneath, plug.foamToBoxM],
    ["to the rail", plug.toRailM],
    ["to the stringer", plug.toStringerM],
    ["deepest plug here", plug.mostDepthM],
    ["cloth over it, across", plug.patchDiameterM],
  ];
  return entries.flatMap(([name, valueM]) => (valueM === null ? [] : [{ name, of: length(valueM) }]));
}
