import type { BoardFile, Problem, ShopFile } from "@lapline/contract";
import { type Finding, SHOP_DEFAULTS } from "@lapline/engine";
import { FindingTape } from "../board/FindingTape";
import { problemAt } from "../board/problemAt";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
import { NumberField } from "../glass/NumberField";
import { TypedField } from "../glass/TypedField";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { Fold } from "../shared/Fold";
import { WhenField } from "../shared/WhenField";
import { AirFields } from "./AirFields";
import { isOfShop } from "./isOfShop";

export interface ShopFormProps {
  readonly file: BoardFile;
  readonly problems: readonly Problem[];
  readonly findings: readonly Finding[];
  edit(path: FieldPath, value: unknown): void;
}

const UNSAID = "unsaid";
const EXPERIENCE = ["first", "some", "trade"] as const;

/** The shop that the board is built in: its air, its days and hours, its people. */
export function ShopForm({ file, problems, findings, edit }: ShopFormProps) {
  const t = useTell();
  const shop: ShopFile = file.shop ?? {};
  const at = (...path: FieldPath) => problemAt(problems, ["shop", ...path]);
  const typed = (label: string, field: "humidity" | "resinTemperature" | "timeZone") => (
    <TypedField
      label={label}
      value={shop[field]}
      problem={at(field)}
      onType={(text) => edit(["shop", field], text.trim() === "" ? undefined : text)}
    />
  );
  const number = (label: string, field: "stands" | "people" | "dropsPerMl") => (
    <NumberField
      label={label}
      value={shop[field]}
      problem={at(field)}
      onType={(value) => edit(["shop", field], value)}
    />
  );
  return (
    <div className="shop-form">
      <h3>{t`The shop`}</h3>
      <AirFields shop={shop} problemAt={at} edit={edit} />
      <div className="fields">
        {typed(t`humidity`, "humidity")}
        {typed(t`resin is at`, "resinTemperature")}
        <WhenField
          label={t`work begins`}
          value={shop.start ?? ""}
          onPick={(start) => edit(["shop", "start"], start === "" ? undefined : start)}
        />
      </div>
      <div className="tapes" role="status">
        {findings.filter(isOfShop).map((finding) => (
          <FindingTape key={`${finding.code} ${finding.path}`} finding={finding} />
        ))}
      </div>
      <Fold title={t`Hours, stands, people`} isFolded>
        <HoursFields shop={shop} edit={edit} />
        <div className="fields">
          {number(t`pairs of stands`, "stands")}
          {number(t`people`, "people")}
          <Choice
            label={t`how often done before`}
            value={shop.experience ?? UNSAID}
            choices={[UNSAID, ...EXPERIENCE] as const}
            names={{
              [UNSAID]: t`not said`,
              first: t`the first time`,
              some: t`some boards`,
              trade: t`by trade`,
            }}
            choose={(value) => edit(["shop", "experience"], value === UNSAID ? undefined : value)}
          />
          {typed(t`time zone, such as Europe/Lisbon`, "timeZone")}
          {number(t`drops to a millilitre, by your own count`, "dropsPerMl")}
          <QuantityField
            label={t`scale shows steps of`}
            value={shop.scale}
            dimension="mass"
            problem={at("scale")}
            onType={(text) => edit(["shop", "scale"], text.trim() === "" ? undefined : text)}
          />
        </div>
      </Fold>
    </div>
  );
}

function HoursFields({ shop, edit }: { readonly shop: ShopFile } & Pick<ShopFormProps, "edit">) {
  const t = useTell();
  const names = { from: t`hands on from`, to: t`hands on to` };
  return (
    <div className="fields">
      {(["from", "to"] as const).map((end) => (
        <div key={end} className="field">
          <label htmlFor={`shop-hours-${end}`}>{names[end]}</label>
          <input
            id={`shop-hours-${end}`}
            type="time"
            value={shop.hours?.[end] ?? ""}
            onChange={({ target }) =>
              edit(
                ["shop", "hours"],
                target.value === ""
                  ? undefined
                  : { ...SHOP_DEFAULTS.hours, ...shop.hours, [end]: target.value },
              )
            }
          />
        </div>
      ))}
    </div>
  );
}
