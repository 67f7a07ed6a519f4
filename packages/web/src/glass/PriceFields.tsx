import type { Plan } from "@lapline/engine";
import { costWords, tell } from "@lapline/present";
import { problemAt } from "../board/problemAt";
import { useSettings } from "../settings/Settings";
import { GlassField } from "./GlassField";
import type { GlassForm } from "./GlassForm";
import { NumberField } from "./NumberField";
import { TypedField } from "./TypedField";

type Cost = NonNullable<Plan["cost"]>;

/** The shop's rolls, and what each material costs by the pack, in the shop's own money. */
export function PriceFields({ form, cost }: { readonly form: GlassForm; readonly cost: Cost }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { shop } = form.file;
  const names = new Map(costWords(cost, reader).map(({ id, name }) => [id, name]));
  return (
    <div className="prices">
      {cost.lines.map(({ id, kind }) => {
        const isRoll = kind === "cloth" && shop?.prices?.[id] === undefined;
        const at = isRoll ? ["shop", "rolls", id] : ["shop", "prices", id];
        const given = isRoll ? shop?.rolls?.[id] : shop?.prices?.[id];
        const price = (
          <NumberField
            label={isRoll ? t`price of a metre` : t`price of a pack`}
            value={given?.price}
            problem={problemAt(form.problems, [...at, "price"]) ?? problemAt(form.problems, at)}
            onType={(value) =>
              form.edit(
                at,
                value === undefined && !isRoll ? undefined : emptyless({ ...given, price: value }),
              )
            }
          />
        );
        return (
          <fieldset key={id} className="fin">
            <legend>{names.get(id) ?? id}</legend>
            <div className="fields">
              {kind === "cloth" && (
                <GlassField
                  form={form}
                  label={t`roll's width`}
                  path={["shop", "rolls", id, "width"]}
                  value={shop?.rolls?.[id]?.width}
                />
              )}
              {price}
              {!isRoll && shop?.prices?.[id] !== undefined && (
                <TypedField
                  label={kind === "wax" ? t`pack (L, mL)` : t`pack (kg, L, m)`}
                  value={shop.prices[id].pack}
                  problem={problemAt(form.problems, [...at, "pack"])}
                  onType={(text) => form.edit([...at, "pack"], text.trim() === "" ? undefined : text)}
                />
              )}
            </div>
          </fieldset>
        );
      })}
    </div>
  );
}

/** Without the fields that hold nothing. */
function emptyless(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
}
