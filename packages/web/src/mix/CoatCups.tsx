import {
  count,
  duration,
  type Finding,
  formatLength,
  fraction,
  mass,
  type Plan,
  temperature,
  volume,
} from "@lapline/engine";
import {
  cupDrawing,
  drawingToSvgNode,
  groupCups,
  hardenerAmounts,
  type Tell,
  tell,
  tellText,
} from "@lapline/present";
import { useId, useMemo } from "react";
import { FindingTape } from "../board/FindingTape";
import { SvgTree } from "../drawing/SvgTree";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { type FigureEntry, Figures } from "../shared/Figures";
import { CoatClocks } from "./CoatClocks";

type Mix = NonNullable<Plan["mix"]>;
type MixCoat = Mix["coats"][number];
type Cup = MixCoat["cups"][number];

interface CoatCupsProps {
  readonly coat: MixCoat;
  readonly mix: Mix;
  readonly findings: readonly Finding[];
}

/** One coat: its cups drawn to their fill, what goes into each, its order on the board, and both its clocks. */
export function CoatCups({ coat, mix, findings }: CoatCupsProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const name = tellText(coat.id, reader).replaceAll("-", " ");
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
          <Figures key={cup.mixAtS} entries={cupEntries(cups, cup, t)} />
        ))}
      </div>
      <MasterBatch coat={coat} />
      <CupOrder coat={coat} />
      <CoatClocks coat={coat} mix={mix} name={name} />
    </>
  );
}

/** Why no cup of the coat can be mixed, beside its crossed cup. */
function WhyNone({ coat, findings }: { coat: MixCoat; findings: readonly Finding[] }) {
  const { reader } = useSettings();
  const why = findings.find(
    ({ severity, code, path }) =>
      severity === "blocker" &&
      (path.startsWith(`mix.coats[${coat.id}]`) || code === "mix.too-cold" || code === "mix.gel-points"),
  );
  const t = tell(reader);
  return why === undefined ? <p>{t`No cup can be mixed as things are.`}</p> : <FindingTape finding={why} />;
}

function cupEntries(cups: number, cup: Cup, t: Tell): FigureEntry[] {
  const each = cups > 1 ? t`${cups} cups, each` : t`1 cup`;
  const { byMass, byVolume } = hardenerAmounts(cup);
  const drops = cup.hardenerDrops === null ? null : count(Math.round(cup.hardenerDrops));
  const hardener: FigureEntry = {
    name: t`hardener`,
    of: byVolume,
    note: drops === null ? <Amount of={byMass} /> : t`${byMass}, ${drops} drops`,
  };
  return [
    { name: t`resin`, of: mass(cup.baseMassKg), note: each },
    ...(cup.hardenerMassKg > 0 ? [hardener] : []),
    ...(cup.waxVolumeM3 > 0 ? [{ name: t`wax solution`, of: volume(cup.waxVolumeM3) }] : []),
    ...(cup.tintMassKg > 0 ? [{ name: t`tint in it`, of: mass(cup.tintMassKg) }] : []),
  ];
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
