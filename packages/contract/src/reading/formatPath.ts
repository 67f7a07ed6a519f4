import { quoteText } from "@lapline/engine";
import type { Step } from "./Fault";

/** `survey.stations[2].left`; names that are not plain words stand in brackets, `shop.rolls[e-136]`. */
export function formatPath(steps: readonly Step[]): string {
  if (steps.length === 0) return "(file)";
  return steps.reduce<string>((path, step) => path + formatStep(step, path === ""), "");
}

function formatStep(step: Step, isFirst: boolean): string {
  if (typeof step === "number") return `[${step}]`;
  if (/^[A-Za-z_]\w{0,39}$/.test(step)) return isFirst ? step : `.${step}`;
  return /^[A-Za-z0-9._-]{1,40}$/.test(step) ? `[${step}]` : `[${quoteText(step)}]`;
}
