import type { ShopFile } from "@lapline/contract";
import type { Phrase } from "@lapline/engine";
import type { FieldPath } from "../board/withField";
import { TypedField } from "../glass/TypedField";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { WhenField } from "../shared/WhenField";

interface AirFieldsProps {
  readonly shop: ShopFile;
  /** Of a field of the shop. */
  problemAt(...path: FieldPath): Phrase | undefined;
  edit(path: FieldPath, value: unknown): void;
}

const WAYS = ["unsaid", "day-night", "list"] as const;
const PATH = ["shop", "temperature"] as const;

/** How warm the shop is: by day and by night, or as it was read, time by time. */
export function AirFields({ shop, problemAt, edit }: AirFieldsProps) {
  const t = useTell();
  const { temperature } = shop;
  const way = temperature === undefined ? "unsaid" : isList(temperature) ? "list" : "day-night";
  const begin = (chosen: (typeof WAYS)[number]) => {
    const first = { at: shop.start ?? "", air: "" };
    edit(PATH, { unsaid: undefined, "day-night": { day: "", night: "" }, list: [first] }[chosen]);
  };
  return (
    <>
      <div className="fields">
        <Choice
          label={t`air in the shop`}
          value={way}
          choices={WAYS}
          names={{ unsaid: t`not said`, "day-night": t`day and night`, list: t`as read, time by time` }}
          choose={begin}
        />
        {temperature !== undefined &&
          !isList(temperature) &&
          (["day", "night"] as const).map((part) => (
            <TypedField
              key={part}
              label={part === "day" ? t`by day` : t`by night`}
              value={temperature[part]}
              problem={problemAt("temperature", part)}
              onType={(text) => edit([...PATH, part], text)}
            />
          ))}
      </div>
      {temperature !== undefined && isList(temperature) && (
        <>
          {temperature.map((reading, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a reading is known by its place in the file
            <fieldset key={i} className="fields air-reading">
              <legend className="unseen">{t`reading ${i + 1}`}</legend>
              <WhenField label={t`at`} value={reading.at} onPick={(at) => edit([...PATH, i, "at"], at)} />
              <TypedField
                label={t`air`}
                value={reading.air}
                problem={problemAt("temperature", i, "air") ?? problemAt("temperature", i, "at")}
                onType={(text) => edit([...PATH, i, "air"], text)}
              />
              <button
                type="button"
                className="plain"
                onClick={() => edit([...PATH, i], undefined)}
              >{t`remove`}</button>
            </fieldset>
          ))}
          <p className="form-acts">
            <button
              type="button"
              onClick={() =>
                edit([...PATH, temperature.length], { at: temperature.at(-1)?.at ?? "", air: "" })
              }
            >{t`another reading`}</button>
          </p>
        </>
      )}
    </>
  );
}

type Temperature = NonNullable<ShopFile["temperature"]>;

const isList = (temperature: Temperature): temperature is Extract<Temperature, readonly unknown[]> =>
  Array.isArray(temperature);
