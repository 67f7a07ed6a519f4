import type { Problem } from "./Problem";

/** Problems as lines for the terminal, in the order of the file. */
export function formatProblems(problems: readonly Problem[]): string {
  return problems.map(formatProblem).join("\n");
}

function formatProblem({ path, read, message, line }: Problem): string {
  const place = line === undefined ? "" : `line ${line}, `;
  return `${place}${path}: read ${read}; ${message}`;
}
