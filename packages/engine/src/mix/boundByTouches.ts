import type { FilmClock } from "./MixPlan";
import type { FilmStart } from "./readFilmStart";

type Stage = "trimFrom" | "trimUntil" | "pullTape" | "flip" | "recoatFrom" | "sandable" | "full";

/** What a fingertip settles: these stages have come, and these have not. */
const SETTLED: Readonly<
  Record<
    FilmStart["touches"][number]["feels"],
    { readonly come: readonly Stage[]; readonly ahead: readonly Stage[] }
  >
> = {
  wet: { come: [], ahead: ["trimFrom", "trimUntil", "pullTape", "flip", "recoatFrom", "sandable", "full"] },
  strings: { come: [], ahead: ["trimFrom", "trimUntil", "flip", "recoatFrom", "sandable", "full"] },
  leathery: { come: ["trimFrom", "pullTape"], ahead: ["trimUntil", "flip", "sandable", "full"] },
  hard: { come: ["trimFrom", "trimUntil", "pullTape", "flip", "recoatFrom"], ahead: [] },
};

/** The film's clock, in which nothing that a fingertip found to have come lies later than the touch, and nothing ahead earlier. */
export function boundByTouches(clock: FilmClock, touches: FilmStart["touches"]): FilmClock {
  let bounded = clock;
  for (const { feels, afterS } of touches) {
    const { come, ahead } = SETTLED[feels];
    for (const stage of come) bounded = { ...bounded, ...moved(bounded, stage, (s) => Math.min(s, afterS)) };
    for (const stage of ahead) bounded = { ...bounded, ...moved(bounded, stage, (s) => Math.max(s, afterS)) };
  }
  return bounded;
}

function moved(clock: FilmClock, stage: Stage, move: (timeS: number) => number): Partial<FilmClock> {
  const keys = [`${stage}S`, `${stage}LowS`, `${stage}HighS`] as const;
  return Object.fromEntries(
    keys.map((key) => {
      const timeS = clock[key];
      return [key, timeS === null ? null : move(timeS)];
    }),
  );
}
