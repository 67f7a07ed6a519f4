import type { Plan } from "@lapline/engine";
import { barredSentence, type Reader } from "@lapline/present";
import type { ExitCode, Terminal } from "../Terminal";
import { exitCodeOf } from "./exitCodeOf";
import { tellBarred } from "./tellBarred";

/** Says beside a command's result that the board is not for water, while it is not; returns how the command ends. */
export function tellState(
  plan: Plan,
  { reader, terminal }: { readonly reader: Reader; readonly terminal: Terminal },
): ExitCode {
  const barred = barredSentence(plan, reader);
  if (barred !== null) tellBarred(barred, terminal);
  return exitCodeOf(plan);
}
