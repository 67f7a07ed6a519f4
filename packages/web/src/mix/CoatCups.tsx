import {
  duration,
  type Finding,
  formatLength,
  fraction,
  mass,
  type Plan,
  temperature,
} from "@lapline/engine";
import { cupDrawing, drawingToSvgNode, groupCups, tell, tellText } from "@lapline/present";
import { useId, useMemo } from "react";
import { SvgTree } from "../drawing/SvgTree";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Figures } from "../shared/Figures";
import { CoatClocks } from "./CoatClocks";
import { cupFigures } from "./cupFigures";
import { WhyNone } from "./WhyNone";

type Mix = NonNullable<Plan["mix"]>;
type MixCoat = Mix["coats"][number];

interface CoatCupsProps {
  readonly coat: MixCoat;
  readonly mix: Mix;
  readonly findings: readonly Finding[];
}

/** One coat: its cups drawn to their fill, what goes into each, its order on the board, and both its clocks. */
export function CoatCups({ coat, mix, findings }: CoatCupsProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const name = tellText(coat.id, reader);
  return (
    <>
      <h3>
        {name} <span className="quiet">{tellText(coat.resin, reader)}</span>
      </h3>
      <p className="quiet">
        {coat.hardenerRatio !== null && coat.hardenerRatio > 0
          ? t`Shop ${temperature(coat.temperatureK)}, resin ${temperature(coat.resinTemperatureK)}, dose ${fraction(coat.hardenerRatio)} of the resin's mass.`
          : t`Shop ${temperature(coat.temperatureK)}, resin ${temperature(coat.resinTemperatureK)}.`}
      </p>
      <div className="cups">
        <CupsView coat={coat} mix={mix} name={name} />
        {coat.cups.length === 0 && <WhyNone coat={coat} findings={findings} />}
        {groupCups(coat.cups).map(({ count: cups, cup }) => (
          <Figures
            key={cup.mixAtS}
            entries={cupFigures(
              { cups, cup, at: `mix.coats[${coat.id}].cups[${coat.cups.indexOf(cup)}]` },
              t,
            )}
          />
        ))}
      </div>
      <MasterBatch coat={coat} />
      <CupOrder coat={coat} />
      <CoatClocks coat={coat} mix={mix} name={name} />
    </>
  );
}

function MasterBatch({ coat: { masterBatch, cups } }: { coat: MixCoat }) {
  const t = useTell();
  if (masterBatch === null) return null;
  return (
    <p>
      {t`Colour first: stir ${mass(masterBatch.tintMassKg)} of tint into ${mass(masterBatch.baseMassKg)} of resin as one master batch.`}{" "}
      {cups.length > 1 ? t`Weigh the ${cups.length} cups from it, and dose each.` : t`Then dose it.`}
    </p>
  );
}

/** Which stretch of the board each cup covers, and when its hardener goes in. */
function CupOrder({ coat: { cups } }: { coat: MixCoat }) {
  const t = useTell();
  const { units } = useSettings();
  const placed = cups.filter((cup) => cup.fromTailM !== null && cup.toM !== null);
  if (placed.length === 0) return null;
  const tape = (lengthM: number) => formatLength(lengthM, { units, denominator: 8 });
  return (
    <ol className="cup-order">
      {placed.map((cup) => (
        <li key={cup.mixAtS}>
          {cup.mixAtS === 0
            ? t`${tape(cup.toM ?? 0)} to ${tape(cup.fromTailM ?? 0)} from the tail, hardener in at once`
            : t`${tape(cup.toM ?? 0)} to ${tape(cup.fromTailM ?? 0)} from the tail, hardener in after ${duration(cup.mixAtS)}`}
        </li>
      ))}
    </ol>
  );
}

function CupsView({ coat, mix, name }: { coat: MixCoat; mix: Mix; name: string }) {
  const { reader } = useSettings();
  const idPrefix = useId();
  const node = useMemo(() => {
    const t = tell(reader);
    return drawingToSvgNode(cupDrawing(coat, mix), {
      title: t`${name}: ${coat.cups.length} cups`,
      desc: coat.cups.length > 0 ? t`Each cup drawn to its fill.` : t`A cup crossed out: none can be mixed.`,
      idPrefix,
    });
  }, [coat, mix, name, idPrefix, reader]);
  return (
    <div className="cup-drawing">
      <SvgTree node={node} />
    </div>
  );
}
