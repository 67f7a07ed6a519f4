import { duration, fraction, mass, type Plan, temperature, volume } from "@lapline/engine";
import { cupDrawing, drawingToSvgNode, gelBandDrawing, groupCups } from "@lapline/present";
import { useCallback, useId, useMemo } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { SvgTree } from "../drawing/SvgTree";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { type FigureEntry, Figures } from "../shared/Figures";
import { PartSection } from "./PartSection";

type Mix = NonNullable<Plan["mix"]>;
type MixCoat = Mix["coats"][number];

/** Cups in the order they are used: what goes in, and how long there is. */
export function MixPart({ plan }: { plan: Plan }) {
  const { mix } = plan;
  return (
    <PartSection id="mix" findings={plan.findings}>
      {mix !== null && (
        <ol className="coats">
          {mix.coats.map((coat) => (
            <li key={coat.id}>
              <CoatCups coat={coat} mix={mix} />
            </li>
          ))}
        </ol>
      )}
    </PartSection>
  );
}

function CoatCups({ coat, mix }: { coat: MixCoat; mix: Mix }) {
  const name = coat.id.replaceAll("-", " ");
  return (
    <>
      <h3>
        {name} <span className="quiet">{coat.resin}</span>
      </h3>
      <p className="quiet">
        Shop <Amount of={temperature(coat.temperatureK)} />, resin{" "}
        <Amount of={temperature(coat.resinTemperatureK)} />
        {coat.hardenerRatio !== null && (
          <>
            , dose <Amount of={fraction(coat.hardenerRatio)} /> of the resin's mass
          </>
        )}
        .
      </p>
      <div className="cups">
        <CupsView coat={coat} mix={mix} name={name} />
        {coat.cups.length === 0 && <p>No cup can be mixed as things are; the reason stands above.</p>}
        {groupCups(coat.cups).map(({ count, cup }) => (
          <Figures key={cup.mixAtS} entries={cupEntries(count, cup)} />
        ))}
      </div>
      {coat.clock !== null && <GelBand clock={coat.clock} mix={mix} name={name} />}
    </>
  );
}

function cupEntries(count: number, cup: MixCoat["cups"][number]): FigureEntry[] {
  const each = count > 1 ? `${count} cups, each` : "1 cup";
  return [
    { name: "resin", of: mass(cup.baseMassKg), note: each },
    { name: "hardener", of: volume(cup.hardenerVolumeM3), note: <Amount of={mass(cup.hardenerMassKg)} /> },
    ...(cup.waxVolumeM3 > 0 ? [{ name: "wax solution", of: volume(cup.waxVolumeM3) }] : []),
  ];
}

function CupsView({ coat, mix, name }: { coat: MixCoat; mix: Mix; name: string }) {
  const idPrefix = useId();
  const node = useMemo(
    () =>
      drawingToSvgNode(cupDrawing(coat, mix), {
        title: `${name}: ${coat.cups.length} cups`,
        desc: "Each cup drawn to its fill.",
        idPrefix,
      }),
    [coat, mix, name, idPrefix],
  );
  return (
    <div className="cup-drawing">
      <SvgTree node={node} />
    </div>
  );
}

function GelBand({ clock, mix, name }: { clock: NonNullable<MixCoat["clock"]>; mix: Mix; name: string }) {
  const { reader } = useSettings();
  const untilS = Math.max(...mix.coats.map((each) => each.clock?.potGelHighS ?? 0)) * 1.05;
  const draw = useCallback(
    (widthMm: number) => gelBandDrawing(clock, { reader, widthMm, untilS }),
    [clock, reader, untilS],
  );
  return (
    <>
      <SheetDrawing
        title={`${name}: when the cup goes off`}
        desc="The band in which the cup gels, from the hardener going in."
        draw={draw}
      />
      <dl className="clock">
        <ClockEntry name="cup gels" from={clock.potGelLowS} until={clock.potGelHighS} />
        <ClockEntry name="trim" from={clock.trimFromS} until={clock.trimUntilS} />
        <ClockEntry name="flip" from={clock.flipS} until={null} />
        <ClockEntry name="recoat" from={clock.recoatFromS} until={clock.recoatUntilS} />
        <ClockEntry name="sand" from={clock.sandableS} until={null} />
      </dl>
    </>
  );
}

function ClockEntry({ name, from, until }: { name: string; from: number | null; until: number | null }) {
  if (from === null) return null;
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {until === null && "from "}
        <Amount of={duration(from)} />
        {until !== null && (
          <>
            {" to "}
            <Amount of={duration(until)} />
          </>
        )}
      </dd>
    </div>
  );
}
