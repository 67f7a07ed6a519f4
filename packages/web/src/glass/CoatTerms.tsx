import { mass, type Plan } from "@lapline/engine";
import { tell, tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Fold } from "../shared/Fold";

type Coat = NonNullable<Plan["layup"]>["coats"][number];

/** What each coat's mix is made of; terms of nought are left out. */
export function CoatTerms({ coats }: { coats: readonly Coat[] }) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <Fold title={t`Where the resin goes`} isFolded>
      <dl className="terms">
        {coats.map((coat) => (
          <div key={coat.id}>
            <dt>{tellText(coat.id, reader)}</dt>
            <dd>
              <ul>
                {coat.terms
                  .filter(({ massKg }) => massKg > 0)
                  .map((term) => (
                    <li key={term.id}>
                      <Amount
                        of={mass(term.massKg)}
                        why={`layup.coats[${coat.id}].terms[${term.id}].massKg`}
                      />{" "}
                      {tellText(term.name, reader)}
                    </li>
                  ))}
              </ul>
            </dd>
          </div>
        ))}
      </dl>
    </Fold>
  );
}
