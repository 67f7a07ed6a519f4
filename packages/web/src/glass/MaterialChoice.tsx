import { type KnownMaterials, nameMaterial } from "@lapline/engine";
import { tell, tellPhrase, tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";

interface MaterialChoiceProps {
  readonly label: string;
  readonly value: string | undefined;
  readonly from: KnownMaterials[keyof KnownMaterials];
  /** What no choice is called; without it one of them must be chosen. */
  readonly none?: string;
  choose(id: string | undefined): void;
}

/** One of the known materials by what it is; an id that nobody knows stays to be seen. */
export function MaterialChoice({ label, value, from, none, choose }: MaterialChoiceProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const ids = from.map(({ id }) => id);
  const isStrange = value !== undefined && !ids.includes(value);
  const nameOf = ({ id, name }: { readonly id: string; readonly name: string }): string =>
    name === id ? tellPhrase(nameMaterial(id), reader) : tellText(name, reader);
  const hasNone = none !== undefined || value === undefined;
  return (
    <Choice
      label={label}
      value={value ?? ""}
      choices={[...(hasNone ? [""] : []), ...(isStrange ? [value] : []), ...ids]}
      names={{
        "": none ?? t`choose`,
        ...(value === undefined ? {} : { [value]: value }),
        ...Object.fromEntries(from.map((each) => [each.id, nameOf(each)])),
      }}
      choose={(id) => choose(id === "" ? undefined : id)}
    />
  );
}
