import { formatProblems } from "@lapline/contract";
import { problem } from "./problem";

export function noSuch(what: string, name: string): Response {
  return problem({
    status: 404,
    title: `No such ${what}`,
    detail: `No ${what} is kept as ${JSON.stringify(name)}.`,
  });
}

/** The answer to a board file that cannot be read, each fault with its place. */
export function notABoard(problems: Parameters<typeof formatProblems>[0]): Response {
  const detail = formatProblems(problems);
  return problem({ status: 422, title: "Not a board file", detail, problems });
}

/** The answer to a record of a shelf that cannot be read. */
export function notARecord(problems: Parameters<typeof formatProblems>[0]): Response {
  const detail = formatProblems(problems);
  return problem({ status: 422, title: "Not a record of this shelf", detail, problems });
}
