import { area, length, mass, type Plan } from "@lapline/engine";
import { cuttingSentence, notchSentences, skinStrip } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { CoatTerms } from "../glass/CoatTerms";
import { ComparedTable } from "../glass/ComparedTable";
import { SkinTable } from "../glass/SkinTable";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Figures } from "../shared/Figures";
import { PartSection } from "./PartSection";

type Layup = NonNullable<Plan["layup"]>;

/** Cloth, resin by coat, the skin in section, and what the board will weigh. */
export function GlassPart({ plan }: { plan: Plan }) {
  const { layup, weight } = plan;
  return (
    <PartSection id="glass" findings={plan.findings}>
      {layup !== null && (
        <>
          <SkinView plan={plan} />
          <SkinTable zones={layup.zones} />
          <div className="pair">
            <div>
              <PieceTable pieces={layup.pieces} />
              <CuttingWords layup={layup} />
            </div>
            <CoatTable coats={layup.coats} />
          </div>
          <CoatTerms coats={layup.coats} />
          <ComparedTable compared={layup.compared} />
        </>
      )}
      {weight !== null && <WeightView weight={weight} />}
    </PartSection>
  );
}

function SkinView({ plan }: { plan: Plan }) {
  const { reader } = useSettings();
  const draw = useCallback((widthMm: number) => skinStrip(plan, { reader, widthMm }), [plan, reader]);
  return (
    <SheetDrawing
      title={`${plan.name}, the skin in section`}
      desc="Laminate and fill coat on the foam, zone by zone, with their thickness."
      draw={draw}
    />
  );
}

function CuttingWords({ layup }: { layup: Layup }) {
  const { reader } = useSettings();
  return (
    <div className="under-table">
      <p>{cuttingSentence(layup, reader)}</p>
      <ul>
        {notchSentences(layup, reader).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}

function PieceTable({ pieces }: { pieces: Layup["pieces"] }) {
  return (
    <div className="wide">
      <table>
        <caption>Cloth</caption>
        <thead>
          <tr>
            <th scope="col">piece</th>
            <th scope="col">length</th>
            <th scope="col">width</th>
            <th scope="col">area</th>
            <th scope="col">weighs</th>
          </tr>
        </thead>
        <tbody>
          {pieces.map((piece) => (
            <tr key={piece.id}>
              <th scope="row">
                {piece.id.replaceAll("-", " ")} <span className="quiet">{piece.cloth}</span>
              </th>
              <td>
                <Amount of={length(piece.lengthM, "coarse")} />
              </td>
              <td>
                <Amount of={length(piece.widthM, "coarse")} />
              </td>
              <td>
                <Amount of={area(piece.areaM2)} />
              </td>
              <td>
                <Amount of={mass(piece.clothMassKg)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function CoatTable({ coats }: { coats: Layup["coats"] }) {
  return (
    <div className="wide">
      <table>
        <caption>Resin, mixed</caption>
        <thead>
          <tr>
            <th scope="col">coat</th>
            <th scope="col">mix</th>
            <th scope="col">band</th>
            <th scope="col">stays on</th>
          </tr>
        </thead>
        <tbody>
          {coats.map((coat) => (
            <tr key={coat.id}>
              <th scope="row">
                {coat.id.replaceAll("-", " ")} <span className="quiet">{coat.resin}</span>
              </th>
              <td className="act">
                <Amount of={mass(coat.resinMassKg)} />
              </td>
              <td>
                <Amount of={mass(coat.resinMassLowKg)} /> to <Amount of={mass(coat.resinMassHighKg)} />
              </td>
              <td>
                <Amount of={mass(coat.keptMassKg)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function WeightView({ weight }: { weight: NonNullable<Plan["weight"]> }) {
  return (
    <>
      <h3>Weight</h3>
      <Figures
        entries={[
          {
            name: "finished",
            of: mass(weight.finishedKg),
            note: (
              <>
                <Amount of={mass(weight.finishedLowKg)} /> to <Amount of={mass(weight.finishedHighKg)} />
              </>
            ),
          },
          { name: "foam", of: mass(weight.foamKg) },
          { name: "stringer", of: mass(weight.stringerKg) },
          { name: "cloth", of: mass(weight.clothKg) },
          { name: "resin", of: mass(weight.resinKg), note: "cured" },
          { name: "fittings", of: mass(weight.fittingsKg) },
        ]}
      />
    </>
  );
}
