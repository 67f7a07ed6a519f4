import type { BoardFile, Problem } from "@lapline/contract";
import { NumberField } from "../glass/NumberField";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { problemAt } from "./problemAt";
import { QuantityField } from "./QuantityField";
import {
  bottomsOf,
  type OneSection,
  type Placed,
  sectionsOf,
  withAnother,
  withoutOne,
} from "./sectionPlaces";
import { type FieldPath, formatFieldPath } from "./withField";

interface SectionFieldsProps {
  readonly file: BoardFile;
  readonly problems: readonly Problem[];
  edit(path: FieldPath, value: unknown): void;
}

/** As the engine takes it where nothing is said; it stands among what was assumed. */
const BEGINNING = { apex: 0.4, deckFullness: 2.6, bottomFullness: 8 };
const BOTTOMS = ["flat", "concave", "vee"] as const;

/** The section across the board, once for all of it or by place: where the rail is widest, how full deck and bottom are, and the bottom. */
export function SectionFields({ file, problems, edit }: SectionFieldsProps) {
  const t = useTell();
  const { section } = file.survey;
  const sections = sectionsOf(section);
  return (
    <>
      <p className="how">
        {t`Apex: share of the thickness at which the rail is widest, 0 at the bottom, 1 at the deck. Fullness: 2 is an ellipse, more is fuller, up to 50 for a slab.`}
      </p>
      {sections.map((placed, i) => (
        <OneSectionFields
          key={formatFieldPath(placed.path)}
          placed={placed}
          number={i + 1}
          of={sections.length}
          problems={problems}
          edit={edit}
          remove={() =>
            edit(
              ["survey", "section"],
              withoutOne(
                sections.map(({ value }) => value),
                i,
              ),
            )
          }
        />
      ))}
      <p className="form-acts">
        <button
          type="button"
          onClick={() =>
            edit(["survey", "section"], section === undefined ? BEGINNING : withAnother(section))
          }
        >
          {section === undefined ? t`say the section` : t`another section, at another place`}
        </button>
      </p>
    </>
  );
}

interface OneSectionProps extends Omit<SectionFieldsProps, "file"> {
  readonly placed: Placed<OneSection>;
  readonly number: number;
  readonly of: number;
  remove(): void;
}

function OneSectionFields({ placed, number, of, problems, edit, remove }: OneSectionProps) {
  const t = useTell();
  const { path, value } = placed;
  const share = (label: string, field: "apex" | "deckFullness" | "bottomFullness") => (
    <NumberField
      label={label}
      value={value[field]}
      problem={problemAt(problems, [...path, field])}
      onType={(typed) => edit([...path, field], typed ?? "")}
    />
  );
  const bottoms = bottomsOf(placed);
  return (
    <fieldset className="fin section">
      <legend>{of === 1 ? t`Section of the whole board` : t`Section ${number}`}</legend>
      <div className="fields">
        {value.fromTail !== undefined && (
          <QuantityField
            label={t`from tail`}
            value={value.fromTail}
            problem={problemAt(problems, [...path, "fromTail"])}
            onType={(text) => edit([...path, "fromTail"], text)}
          />
        )}
        {share(t`apex`, "apex")}
        {share(t`deck fullness`, "deckFullness")}
        {share(t`bottom fullness`, "bottomFullness")}
      </div>
      {bottoms.map(({ path: at, value: bottom }, i) => (
        <div key={formatFieldPath(at)} className="fields">
          {bottom.fromTail !== undefined && (
            <QuantityField
              label={t`bottom, from tail`}
              value={bottom.fromTail}
              problem={problemAt(problems, [...at, "fromTail"])}
              onType={(text) => edit([...at, "fromTail"], text)}
            />
          )}
          <Choice
            label={t`bottom`}
            value={bottom.kind}
            choices={BOTTOMS}
            choose={(kind) => edit(at, bottomOf(kind, bottom))}
          />
          {bottom.kind !== "flat" && (
            <QuantityField
              label={t`depth`}
              value={bottom.depth}
              problem={problemAt(problems, [...at, "depth"])}
              onType={(text) => edit([...at, "depth"], text)}
            />
          )}
          <button
            type="button"
            className="plain"
            onClick={() =>
              edit(
                [...path, "bottom"],
                withoutOne(
                  bottoms.map((each) => each.value),
                  i,
                ),
              )
            }
          >{t`remove`}</button>
        </div>
      ))}
      <p className="form-acts">
        <button
          type="button"
          onClick={() =>
            edit(
              [...path, "bottom"],
              value.bottom === undefined ? { kind: "flat" } : withAnother(value.bottom),
            )
          }
        >
          {bottoms.length === 0 ? t`say the bottom` : t`another bottom, at another place`}
        </button>
        <button type="button" className="plain" onClick={remove}>
          {t`take this section away`}
        </button>
      </p>
    </fieldset>
  );
}

/** Another kind of bottom at the same place keeps its depth where it has one. */
function bottomOf(
  kind: (typeof BOTTOMS)[number],
  before: { readonly fromTail?: string; readonly depth?: string },
) {
  const place = before.fromTail === undefined ? {} : { fromTail: before.fromTail };
  return kind === "flat" ? { ...place, kind } : { ...place, kind, depth: before.depth ?? "" };
}
