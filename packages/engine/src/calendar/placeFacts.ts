import type { Films } from "./buildFilms";
import type { CalendarTask } from "./CalendarTask";
import type { Placed } from "./Placed";

/**
 * What the record says is done, as it happened: hands off at its time, and on for as long as is reckoned before.
 * @param timeOf when a step was done, in passed seconds, as recorded or as taken
 */
export function placeFacts(
  tasks: readonly CalendarTask[],
  films: Films,
  timeOf: (task: CalendarTask) => number,
): Map<string, Placed> {
  const facts = tasks
    .filter(({ done }) => done)
    .map((task): Placed => {
      const endS = timeOf(task);
      const hands = { beginS: endS - task.handsOnS, endS };
      return {
        ...hands,
        id: task.id,
        sittings: [hands],
        isCoat: task.cures !== null,
        film: films.asRecorded(task) ?? films.at(task, hands),
        readyS: endS,
        isFact: true,
        opensS: hands.beginS,
        opener: null,
        closesS: null,
        isLate: false,
        sandFirstS: 0,
        cause: "start",
        tape: null,
      };
    });
  return new Map(facts.map((fact) => [fact.id, fact]));
}
