import type { BoardFile, Problem } from "@lapline/contract";
import type { Board, Plan } from "@lapline/engine";
import type {
  Answer,
  Asked,
  MeshAnswer,
  OffersAnswer,
  PlanAnswer,
  PlanAsked,
  PlanFailed,
} from "./answerPlan";
import { openPartsReader } from "./openPartsReader";
import type { Planner } from "./Planner";
import type { Understood } from "./understand";

/** A thread that answers in the order in which it is asked. */
export interface PlanThread {
  ask(asked: Asked): void;
  /** `lost`: it answers no more. */
  listen(calls: { answered(answer: Answer | PlanFailed): void; lost(): void }): void;
}

interface Waiting {
  resolve(answer: Answer): void;
  reject(why: Error): void;
}

/** Asks a thread for plans. It is opened at once, and anew after it was lost. */
export function openPlanner(openThread: () => PlanThread): Planner {
  const readBoard = openPartsReader<Board>();
  const readPlan = openPartsReader<Plan>();
  const readProblems = openPartsReader<{ readonly all: readonly Problem[] }>();
  const waiting: Waiting[] = [];
  let thread: PlanThread | null = null;
  const open = (): PlanThread => {
    const opened = openThread();
    opened.listen({
      answered(answer) {
        const asker = waiting.shift();
        if ("why" in answer) asker?.reject(new Error(answer.why));
        else asker?.resolve(answer);
      },
      lost() {
        thread = null;
        for (const asker of waiting.splice(0)) asker.reject(new Error("The planning could not be loaded."));
      },
    });
    thread = opened;
    return opened;
  };
  const ask = (asked: Asked): Promise<Answer> =>
    new Promise((resolve, reject) => {
      const asking = thread ?? open();
      waiting.push({ resolve, reject });
      asking.ask(asked);
    });
  const understood = async (asked: PlanAsked): Promise<Understood> => {
    const { problems, good } = (await ask(asked)) as PlanAnswer;
    return {
      problems: readProblems(problems).all,
      good: good && {
        board: readBoard(good.board),
        file: JSON.parse(good.file) as BoardFile,
        plan: readPlan(good.plan),
      },
    };
  };
  open();
  return {
    async plan(text) {
      const { good } = await understood({ text });
      if (good !== null) return { ok: true, ...good };
      const { textProblems } = await import("./textProblems");
      return { ok: false, problems: textProblems(text) };
    },
    understand: (file, known) => understood({ file, known }),
    mesh: async (survey, detail) => ((await ask({ survey, detail })) as MeshAnswer).mesh,
    offers: async (on, set) => ((await ask({ on, set })) as OffersAnswer).offers,
  };
}
