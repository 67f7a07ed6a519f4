import type { BoardFile } from "@lapline/contract";
import { useEffect, useId, useState } from "react";
import { type BoardEntry, listBoards, readBoard } from "../api/boardClient";
import { failureWords } from "../api/failureWords";
import { TypedField } from "../glass/TypedField";
import { planner } from "../plan/tabPlanner";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { problemLines } from "../shared/problemLines";
import { copyOfBoard } from "./copyOfBoard";

/** A new board like one that is in the Shed. */
export function FromOldBoard({ keep }: { keep(file: BoardFile): void }) {
  const t = useTell();
  const { reader } = useSettings();
  const id = useId();
  const [entries, setEntries] = useState<readonly BoardEntry[]>([]);
  const [chosen, setChosen] = useState("");
  const [name, setName] = useState("");
  const [readings, setReadings] = useState<"anew" | "kept">("anew");
  const [why, setWhy] = useState<string | null>(null);
  useEffect(() => {
    let current = true;
    listBoards().then(
      (all) => current && setEntries(all.filter(({ readable }) => readable)),
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, []);
  const old = entries.find((entry) => entry.id === chosen);
  const copyName = name.trim() === "" && old !== undefined ? t`${old.name}, another` : name;
  const copy = async () => {
    if (old === undefined) return;
    try {
      const read = await planner.plan((await readBoard(old.id)).text);
      if (read.ok) keep(copyOfBoard(read.file, { name: copyName, readings: readings === "kept" }));
      else setWhy(problemLines(read.problems, reader));
    } catch (error) {
      setWhy(failureWords(error, t));
    }
  };
  if (entries.length === 0) return null;
  return (
    <form
      className="questions"
      aria-labelledby={id}
      onSubmit={(event) => {
        event.preventDefault();
        void copy();
      }}
    >
      <h2 id={id}>{t`Like an old board`}</h2>
      <div className="question fields">
        <Choice
          label={t`board`}
          value={chosen}
          choices={["", ...entries.map((entry) => entry.id)]}
          names={{ "": t`choose`, ...Object.fromEntries(entries.map((entry) => [entry.id, entry.name])) }}
          choose={setChosen}
        />
        <Choice<"anew" | "kept">
          label={t`its readings`}
          value={readings}
          choices={["anew", "kept"]}
          names={{ anew: t`to be taken anew`, kept: t`kept, for a blank shaped alike` }}
          choose={setReadings}
        />
        <TypedField label={t`name`} value={name} onType={setName} />
      </div>
      <p className="how">
        {t`Lay-up, fins and shop come along; its record, its rider, its weight and what was read of its fins do not.`}
      </p>
      {why !== null && <p className="tape tape-blocker">{why}</p>}
      <p className="form-acts">
        <button type="submit" aria-disabled={old === undefined}>{t`Begin a board like it`}</button>
        {old !== undefined && name.trim() === "" && <span className="how">{t`Left empty: ${copyName}`}</span>}
      </p>
    </form>
  );
}
