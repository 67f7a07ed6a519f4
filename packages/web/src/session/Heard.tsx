import type { BoardFile } from "@lapline/contract";
import { fieldName } from "../board/fieldName";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import { wallTime } from "../shared/wallTime";
import type { BoardSession, Clash, OpenBoard } from "./SessionView";
import { valueWords } from "./valueWords";
import "./session.css";

interface HeardProps {
  readonly session: BoardSession;
  readonly board: OpenBoard;
}

/** What other devices changed: where somebody has to choose, both values; what undo could not do; who changed something last. */
export function Heard({ session, board }: HeardProps) {
  const t = useTell();
  const { clashes, changedBy, notice, draft } = board;
  return (
    <>
      <div role="status">
        {notice === "record-stays" && (
          <p className="tape">{t`What is in the record stays there: write a new entry that corrects it.`}</p>
        )}
        {notice === "struck" && <p className="tape">{t`Struck in the record; nothing there is erased.`}</p>}
        {notice === "changed-since" && (
          <p className="tape">{t`Changed on another device since: that value stays as it is.`}</p>
        )}
        {changedBy !== null && clashes.length === 0 && (
          <p className="quiet">{t`Last changed by ${changedBy.device}, ${localTime(changedBy.at)}.`}</p>
        )}
      </div>
      {clashes.length > 0 && (
        <section className="clashes" aria-labelledby="clashes">
          <h2 id="clashes">{t`Changed here and on another device: choose`}</h2>
          {clashes.map((clash) => (
            <ClashChoice key={clash.path} clash={clash} file={draft.file} choose={session.choose} />
          ))}
          <p className="clash-bar">
            <a href="#clashes">
              {clashes.length === 1
                ? t`1 field waits for a choice`
                : t`${clashes.length} fields wait for a choice`}
            </a>
          </p>
        </section>
      )}
    </>
  );
}

interface ClashChoiceProps {
  readonly clash: Clash;
  readonly file: BoardFile;
  choose(path: string, side: "mine" | "theirs"): void;
}

/** One field that two devices changed, each value with its device and time; nothing is sent of it until one is chosen. */
function ClashChoice({ clash, file, choose }: ClashChoiceProps) {
  const t = useTell();
  const { reader } = useSettings();
  const name = fieldName(file, clash.path, reader);
  const { by, typedAt } = clash;
  const here = typedAt === null ? t`typed here` : t`typed here, ${localTime(typedAt)}`;
  const there = by === null ? t`kept on the shop's computer` : t`${by.device}, ${localTime(by.at)}`;
  const side = (value: unknown, who: string, take: "mine" | "theirs") => (
    <button type="button" onClick={() => choose(clash.path, take)}>
      <span className="clash-value">
        <Fractions text={valueWords(value, reader)} />
      </span>
      <span className="clash-who">{who}</span>
    </button>
  );
  return (
    <fieldset className="clash">
      <legend>{name}</legend>
      {side(clash.mine, here, "mine")}
      {side(clash.theirs, there, "theirs")}
    </fieldset>
  );
}

/** As a word of a sentence it is told in the reader's language. */
function localTime(at: string): string {
  return wallTime(new Date(at));
}
