import { type BoardFile, formatBoardFile } from "@lapline/contract";
import { useState } from "react";
import { failureWords } from "../api/failureWords";
import { createBoard } from "../api/shedClient";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { PageTop } from "../shared/PageTop";
import { usePageTitle } from "../shared/usePageTitle";
import { moveTo } from "../shared/usePath";
import { FromFile } from "./FromFile";
import { FromOldBoard } from "./FromOldBoard";
import { type Answers, startingFile } from "./startingFile";
import { suggestName } from "./suggestName";
import { ThreeQuestions } from "./ThreeQuestions";
import "./newBoard.css";

/** A stringer in polyurethane and polyester over it: what most boards were made of. Each is there to be changed. */
const FIRST: Answers = { name: "", length: "", arrangement: "tri", foam: "pu-48", resin: "polyester" };

/** A new board: by three questions, like an old one, or from a file. */
export default function NewBoardPage() {
  const t = useTell();
  const { units } = useSettings();
  const title = t`New board`;
  const [answers, setAnswers] = useState(FIRST);
  const [table, setTable] = useState<BoardFile["survey"] | null>(null);
  const [why, setWhy] = useState<string | null>(null);
  usePageTitle(title);
  const name = answers.name.trim() || suggestName(answers) || title;
  const begun = withTable(startingFile({ ...answers, name }, units), table);
  const fail = (error: unknown) => setWhy(failureWords(error, t));
  const create = async (text: string) => {
    try {
      moveTo(`/board/${await createBoard(text)}`);
    } catch (error) {
      fail(error);
    }
  };
  const keep = (file: BoardFile) => void create(formatBoardFile(file));
  return (
    <>
      <PageTop />
      <main className="page new">
        <div>
          <h1>{title}</h1>
          <div role="status">{why !== null && <p className="tape tape-blocker">{why}</p>}</div>
        </div>
        <ThreeQuestions
          answers={answers}
          begun={begun}
          table={table}
          change={(some) => {
            if (some.length !== undefined) setTable(null);
            setAnswers({ ...answers, ...some });
          }}
          keep={keep}
          fail={fail}
        />
        <FromFile
          begun={begun}
          keepText={(text) => void create(text)}
          takeTable={(survey) => {
            setTable(survey);
            setAnswers({ ...answers, length: survey.length });
          }}
          takeName={(name) => setAnswers({ ...answers, name })}
          fail={fail}
        />
        <FromOldBoard keep={keep} />
      </main>
    </>
  );
}

/** With the readings of a table, where one was given. */
function withTable(file: BoardFile, table: BoardFile["survey"] | null): BoardFile {
  return table === null ? file : { ...file, survey: { ...file.survey, stations: table.stations } };
}
