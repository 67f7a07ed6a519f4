import { area, length, listMaterials, mass, type Plan } from "@lapline/engine";
import { cuttingSentence, notchSentences, pieceName, skinStrip, tellText } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { CoatTerms } from "../glass/CoatTerms";
import { ComparedTable } from "../glass/ComparedTable";
import { LayupForm } from "../glass/LayupForm";
import { SkinTable } from "../glass/SkinTable";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { Fractions } from "../shared/Fractions";
import { SolidFold } from "../solid/SolidFold";
import { CostView } from "../weight/CostView";
import { WeightView } from "../weight/WeightView";
import type { Draft } from "./Draft";
import { PartSection } from "./PartSection";
import type { FieldPath } from "./withField";

type Layup = NonNullable<Plan["layup"]>;

interface GlassPartProps {
  readonly draft: Draft;
  edit(path: FieldPath, value: unknown): void;
}

/** Cloth, resin by coat, the skin in section, what the board weighs and what it costs. */
export function GlassPart({ draft, edit }: GlassPartProps) {
  const { file, problems, good } = draft;
  const { plan, board } = good;
  const { layup, weight, cost } = plan;
  return (
    <PartSection id="glass" findings={plan.findings}>
      <LayupForm form={{ file, plan, problems, known: listMaterials(board.materials), edit }} />
      {layup !== null && (
        <>
          <SkinView plan={plan} />
          <SkinTable zones={layup.zones} />
          <SolidFold plan={plan} survey={board.survey} first="skin" />
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
      {weight !== null && <WeightView file={file} plan={plan} weight={weight} edit={edit} />}
      {cost !== null && <CostView cost={cost} />}
    </PartSection>
  );
}

function SkinView({ plan }: { plan: Plan }) {
  const t = useTell();
  const { reader } = useSettings();
  const draw = useCallback((widthMm: number) => skinStrip(plan, { reader, widthMm }), [plan, reader]);
  return (
    <SheetDrawing
      title={t`${plan.name}, the skin in section`}
      desc={t`Laminate and fill coat on the foam, zone by zone, with their thickness.`}
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
          <li key={sentence}>
            <Fractions text={sentence} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function PieceTable({ pieces }: { pieces: Layup["pieces"] }) {
  const { reader } = useSettings();
  const t = useTell();
  return (
    <div className="wide">
      <table>
        <caption>{t`Cloth`}</caption>
        <thead>
          <tr>
            <th scope="col">{t`piece`}</th>
            <th scope="col">{t`length`}</th>
            <th scope="col">{t`width`}</th>
            <th scope="col">{t`area`}</th>
            <th scope="col">{t`weighs`}</th>
          </tr>
        </thead>
        <tbody>
          {pieces.map((piece) => (
            <tr key={piece.id}>
              <th scope="row">
                {pieceName(piece.id, reader)} <span className="quiet">{piece.cloth}</span>
              </th>
              <td>
                <Amount of={length(piece.lengthM, "coarse")} why={`layup.pieces[${piece.id}].lengthM`} />
              </td>
              <td>
                <Amount of={length(piece.widthM, "coarse")} why={`layup.pieces[${piece.id}].widthM`} />
              </td>
              <td>
                <Amount of={area(piece.areaM2)} why={`layup.pieces[${piece.id}].areaM2`} />
              </td>
              <td>
                <Amount of={mass(piece.clothMassKg)} why={`layup.pieces[${piece.id}].clothMassKg`} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function CoatTable({ coats }: { coats: Layup["coats"] }) {
  const { reader } = useSettings();
  const t = useTell();
  return (
    <div className="wide">
      <table>
        <caption>{t`Resin, mixed`}</caption>
        <thead>
          <tr>
            <th scope="col">{t`coat`}</th>
            <th scope="col">{t`mix`}</th>
            <th scope="col">{t`band`}</th>
            <th scope="col">{t`stays on`}</th>
          </tr>
        </thead>
        <tbody>
          {coats.map((coat) => (
            <tr key={coat.id}>
              <th scope="row">
                {tellText(coat.id, reader)} <span className="quiet">{tellText(coat.resin, reader)}</span>
              </th>
              <td className="act">
                <Amount of={mass(coat.resinMassKg)} why={`layup.coats[${coat.id}].resinMassKg`} />
              </td>
              <td>{t`${mass(coat.resinMassLowKg)} to ${mass(coat.resinMassHighKg)}`}</td>
              <td>
                <Amount of={mass(coat.keptMassKg)} why={`layup.coats[${coat.id}].keptMassKg`} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
