import type { Plan } from "@lapline/engine";
import { finName, type Reader, tell } from "@lapline/present";
import type { BenchCard, MarkEnd } from "./BenchCard";
import type { BenchStep } from "./listCards";
import { shortTitle } from "./shortTitle";

/** What a screen is called. */
export function cardTitle(card: BenchCard, step: BenchStep, plan: Plan, reader: Reader): string {
  const t = tell(reader);
  switch (card.kind) {
    case "start":
      return shortTitle(step, reader).name;
    case "cut":
      return t`Cut the cloth`;
    case "lay":
      return t`Lay on`;
    case "cup": {
      const cups = plan.mix?.coats.find(({ id }) => id === card.coat)?.cups.length ?? 0;
      return cups > 1 ? t`Cup ${card.number + 1} of ${cups}` : t`Cup ${card.number + 1}`;
    }
    case "clock":
      return t`Wet clock`;
    case "mark": {
      const fin = finName(card.fin, reader);
      const titles: Readonly<Record<MarkEnd, string>> = {
        trailing: t`Mark ${fin}, trailing`,
        leading: t`Mark ${fin}, leading`,
        stand: t`Mark ${fin}, how it stands`,
      };
      return titles[card.end];
    }
    case "plug":
      return t`Leash plug`;
    case "gate":
      return t`Mark and verify`;
    case "paper":
      return t`Paper ${card.grit}`;
    case "through":
      return t`What shows`;
    case "weigh":
      return t`Weigh-in`;
  }
}
