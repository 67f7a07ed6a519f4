import type { BoardFile, Problem } from "@lapline/contract";
import { problemAt } from "../board/problemAt";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
import { TypedField } from "../glass/TypedField";
import { useTell } from "../settings/useTell";
import { Fold } from "../shared/Fold";

interface OrderFieldsProps {
  readonly file: BoardFile;
  readonly problems: readonly Problem[];
  edit(path: FieldPath, value: unknown): void;
}

/** What the board is called, who it is for, and its serial number. */
export function OrderFields({ file, problems, edit }: OrderFieldsProps) {
  const t = useTell();
  const orNone = (text: string) => (text.trim() === "" ? undefined : text);
  const { order } = file;
  // Where the last of it is emptied, nothing of the order stays.
  const setOrder = (field: "rider" | "riderMass" | "serial", text: string) => {
    const { [field]: _, ...rest } = order ?? {};
    const value = orNone(text);
    const next = value === undefined ? rest : { ...rest, [field]: value };
    edit(["order"], Object.keys(next).length === 0 ? undefined : next);
  };
  return (
    <Fold title={t`Name and rider`} isFolded>
      <div className="survey-fields">
        <TypedField
          label={t`name`}
          value={file.name}
          problem={problemAt(problems, ["name"])}
          onType={(text) => edit(["name"], text)}
        />
        <TypedField
          label={t`rider`}
          value={order?.rider}
          problem={problemAt(problems, ["order", "rider"])}
          onType={(text) => setOrder("rider", text)}
        />
        <QuantityField
          label={t`rider weighs`}
          value={order?.riderMass}
          dimension="mass"
          problem={problemAt(problems, ["order", "riderMass"])}
          onType={(text) => setOrder("riderMass", text)}
        />
        <TypedField
          label={t`serial number`}
          value={order?.serial}
          problem={problemAt(problems, ["order", "serial"])}
          onType={(text) => setOrder("serial", text)}
        />
      </div>
    </Fold>
  );
}
