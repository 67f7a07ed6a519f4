import type { RecordEntryFile } from "@lapline/contract";
import { standingEntries } from "@lapline/engine";
import { tell, tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { wallTime } from "../shared/wallTime";
import type { BenchHand } from "./BenchHand";

const FEELS = ["wet", "strings", "leathery", "hard"] as const;
type Feels = (typeof FEELS)[number];
type TouchedFile = Extract<RecordEntryFile, { readonly kind: "touched" }>;

interface FingertipProps {
  readonly hand: BenchHand;
  readonly coat: string;
  touch(feels: Feels): void;
}

/** What a gloved fingertip finds at the edge of the coat, one touch each; a slip is struck out by a later entry. */
export function Fingertip({ hand, coat, touch }: FingertipProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const last = standingEntries(hand.draft.file.record ?? [])
    .filter((entry): entry is TouchedFile => entry.kind === "touched" && entry.coat === coat)
    .toSorted((a, b) => (a.at ?? "").localeCompare(b.at ?? ""))
    .at(-1);
  return (
    <fieldset className="fingertip">
      <legend>{t`A gloved fingertip finds it`}</legend>
      <div className="feels">
        {FEELS.map((feels) => (
          <button key={feels} type="button" onClick={() => touch(feels)}>
            {tellText(feels, reader)}
          </button>
        ))}
      </div>
      {last !== undefined && (
        <>
          <p role="status">
            {last.at === undefined
              ? t`Last: ${last.feels}.`
              : t`Last: ${last.feels}, ${last.at.slice(0, 16)}.`}
          </p>
          <button
            type="button"
            className="slight"
            onClick={() => hand.addEntry({ kind: "struck", corrects: last.id, at: wallTime(new Date()) })}
          >
            {t`A slip: strike it out`}
          </button>
        </>
      )}
    </fieldset>
  );
}
