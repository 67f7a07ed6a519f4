import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { tellText } from "../language/tellText";
import { wallTimeText } from "../words/wallTimeWords";
import { barredSentence, waterRules, waterState } from "../words/waterWords";
import { assumptionsBlock } from "./assumptionsBlock";
import type { Block } from "./Block";
import { calendarBlock } from "./calendarBlock";
import { costBlock } from "./costBlock";
import { cutBlock } from "./cutBlock";
import { findingLines, findingsBlock } from "./findingsBlock";
import { finsBlock } from "./fins/finsBlock";
import { glassBlock } from "./glassBlock";
import { measureBlock } from "./measureBlock";
import { mixBlock } from "./mixBlock";
import { sandBlock } from "./sandBlock";
import { stepsBlock } from "./stepsBlock";
import { weighinBlock } from "./weighinBlock";
import { weightBlock } from "./weightBlock";
import { PAGE_WIDTH, wrapText } from "./wrapText";

/**
 * The plan as a page to tape to the wall: at most 80 letters wide, in the order of the build, every figure from the plan.
 * What stops the build stands at the top, and again with the other findings; what was assumed stands at the end.
 */
export function formatPlanText(plan: Plan, reader: Reader): string {
  const weighin = weighinBlock(plan, reader);
  const blocks: readonly Block[] = [
    measureBlock(plan, reader),
    finsBlock(plan, reader),
    glassBlock(plan, reader),
    cutBlock(plan, reader),
    mixBlock(plan, reader),
    sandBlock(plan, reader),
    waterBlock(plan, reader),
    stepsBlock(plan, reader),
    calendarBlock(plan, reader),
    weightBlock(plan, reader),
    ...(weighin === null ? [] : [weighin]),
    costBlock(plan, reader),
    findingsBlock(plan.findings, reader),
    assumptionsBlock(plan.assumptions, reader),
  ];
  const lines = [
    ...headLines(plan, reader),
    ...blocks.flatMap((block) => ["", ...titleLines(block.title), ...block.lines]),
  ];
  return `${lines.join("\n")}\n`;
}

function headLines(plan: Plan, reader: Reader): readonly string[] {
  const t = tell(reader);
  const blockers = plan.findings.filter((finding) => finding.severity === "blocker");
  const barred = barredSentence(plan, reader);
  return [
    ...wrapText(t`BUILD PLAN: ${plan.name}`),
    ...wrapText(
      t`Lapline ${plan.engine}. The safety data sheets, local codes and a licensed person decide, not this page.`,
    ),
    ...(barred === null ? [] : wrapText(barred)),
    ...(blockers.length > 0
      ? ["", ...titleLines(t`STOP`), ...blockers.flatMap((finding) => findingLines(finding, reader))]
      : []),
  ];
}

function titleLines(title: string): readonly string[] {
  return [`${title} ${"-".repeat(Math.max(0, PAGE_WIDTH - title.length - 1))}`];
}

/** Whether the board may go into the water, and what is still open. */
function waterBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { water } = plan;
  const lines = [
    waterState(plan, reader),
    ...water.open.map(({ says, step }) =>
      step === null
        ? `- ${tellPhrase(says, reader)}`
        : `- ${tellPhrase(says, reader)} (${tellText(step, reader)})`,
    ),
    ...(water.firstSurfAt === null ? [] : [t`First surf: ${wallTimeText(water.firstSurfAt, reader)}`]),
    ...waterRules(reader),
  ];
  return {
    title: t`SEAL AND WATER`,
    lines: lines.flatMap((line) => wrapText(line, { indent: 2, hanging: 4 })),
  };
}
