import { length, type Plan } from "@lapline/engine";
import { tailWord, tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Fractions } from "../shared/Fractions";
import { TapeAmount } from "../shared/TapeAmount";

/** Where the leash plug's hole goes, how wide and how deep. */
export function PlugCard({ plan: { finset } }: { plan: Plan }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const plug = finset?.leashPlug ?? null;
  if (finset === null || plug === null) return null;
  return (
    <>
      <p className="as-it-lies">
        {plug.side === "left" ? t`Deck up: LEFT of the line.` : t`Deck up: RIGHT of the line.`}
      </p>
      <dl className="figures">
        <div>
          <dt>{t`from the ${tailWord(finset.line)}, by tape`}</dt>
          <dd>
            <TapeAmount ofM={plug.fromTailTapeM} why="finset.leashPlug.fromTailTapeM" />
          </dd>
        </div>
        <div>
          <dt>{t`from the line`}</dt>
          <dd>
            <TapeAmount ofM={plug.fromCentrelineM} why="finset.leashPlug.fromCentrelineM" />
          </dd>
        </div>
        <div>
          <dt>{t`deep`}</dt>
          <dd>
            <Amount of={plug.depthM === null ? null : length(plug.depthM)} why="finset.leashPlug.depthM" />
          </dd>
        </div>
      </dl>
      {plug.diameterM !== null && (
        <p>
          <Fractions text={t`The hole is ${length(plug.diameterM)} wide.`} />
        </p>
      )}
    </>
  );
}
