import { angle, length, type Plan } from "@lapline/engine";
import { finDrawing, setOutWords } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { PartSection } from "./PartSection";

type Finset = NonNullable<Plan["finset"]>;

/** The marking-out drawing and the marks in a table. */
export function FinsPart({ plan }: { plan: Plan }) {
  const { units } = useSettings();
  const { finset } = plan;
  const draw = useCallback((widthMm: number) => finDrawing(plan, { units, widthMm }), [plan, units]);
  return (
    <PartSection id="fins" findings={plan.findings}>
      {finset !== null && (
        <>
          <p className="says">{setOutWords(finset)}</p>
          <div className="fins">
            <SheetDrawing
              title={`${plan.name}, marking-out`}
              desc="The tail bottom up, nose away, with the fin marks; their distances stand in the table."
              draw={draw}
            />
            <div>
              <MarksTable marks={finset.marks} />
              <StandTable marks={finset.marks} />
              <Plug plug={finset.leashPlug} />
            </div>
          </div>
        </>
      )}
    </PartSection>
  );
}

function MarksTable({ marks }: { marks: Finset["marks"] }) {
  return (
    <div className="wide">
      <table className="marks">
        <caption>Mark</caption>
        <thead>
          <tr>
            <th scope="col">fin, end</th>
            <th scope="col">from tail</th>
            <th scope="col">from line</th>
            <th scope="col">from rail</th>
          </tr>
        </thead>
        {marks.map((mark) => (
          <tbody key={mark.id}>
            {(["trailing", "leading"] as const).map((end) => (
              <tr key={end} className={end}>
                <th scope="row">
                  {mark.id.replaceAll("-", " ")}
                  <span className="quiet">, {end}</span>
                </th>
                <td>
                  <Amount of={length(mark[end].fromTailTapeM)} />
                </td>
                <td>
                  <Amount of={length(mark[end].fromCentrelineM)} />
                </td>
                <td>
                  <Amount of={length(mark[end].fromRailM)} />
                </td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}

function StandTable({ marks }: { marks: Finset["marks"] }) {
  return (
    <div className="wide">
      <table>
        <caption>Stand</caption>
        <thead>
          <tr>
            <th scope="col">fin</th>
            <th scope="col">toe over base</th>
            <th scope="col">toe</th>
            <th scope="col">string beside nose</th>
            <th scope="col">cant</th>
            <th scope="col">foam left</th>
          </tr>
        </thead>
        <tbody>
          {marks.map((mark) => (
            <tr key={mark.id}>
              <th scope="row">{mark.id.replaceAll("-", " ")}</th>
              <td>
                <Amount of={length(mark.toeOverBaseM, "fine")} />
              </td>
              <td>
                <Amount of={angle(mark.toeRad)} />
              </td>
              <td>
                <Amount of={mark.side === "centre" ? null : length(mark.aimBesideNoseM)} />
              </td>
              <td>
                <Amount of={angle(mark.cantRad)} />
              </td>
              <td>
                <Amount of={mark.foamUnderM === null ? null : length(mark.foamUnderM)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Plug({ plug }: { plug: Finset["leashPlug"] }) {
  if (plug === null) return null;
  return (
    <p>
      Leash plug, on the deck, {plug.side}: <Amount of={length(plug.fromTailTapeM)} /> from the tail,{" "}
      <Amount of={length(plug.fromCentrelineM)} /> from the line.
    </p>
  );
}
