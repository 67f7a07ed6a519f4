import type { Shop } from "@lapline/store";

interface Answer {
  readonly destroyed: boolean;
  destroy(): unknown;
  once(event: "close", ended: () => void): unknown;
}

export interface OpenAnswers {
  /** To be asked for before a device is looked up, and handed to `add` with it. */
  moment(): number;
  /** Cut off as soon as the device is revoked, by whichever program on this database. */
  add(deviceId: string, answer: Answer, since: number): void;
  close(): void;
}

/** The answers that are on their way to devices, event streams among them, each ended when its device is let in no longer. */
export function openAnswers({ changes, devices }: Pick<Shop, "changes" | "devices">): OpenAnswers {
  const open = new Map<string, Set<Answer>>();
  let moment = 0;
  let isLooking = false;
  let lookAgain = false;
  const endRevoked = async () => {
    const letIn = new Set((await devices.list()).map(({ id }) => id));
    for (const [id, answers] of open) if (!letIn.has(id)) for (const answer of answers) answer.destroy();
  };
  const look = async () => {
    lookAgain = true;
    if (isLooking) return;
    isLooking = true;
    while (lookAgain) {
      lookAgain = false;
      // Where the database is away nobody was revoked; it is asked again at the next change.
      await endRevoked().catch(() => undefined);
    }
    isLooking = false;
  };
  const unwatch = changes.watch(() => {
    moment++;
    if (open.size > 0) void look();
  });
  return {
    moment: () => moment,
    add(deviceId, answer, since) {
      if (answer.destroyed) return;
      const answers = open.get(deviceId) ?? new Set();
      open.set(deviceId, answers.add(answer));
      answer.once("close", () => {
        answers.delete(answer);
        if (answers.size === 0 && open.get(deviceId) === answers) open.delete(deviceId);
      });
      // It may have been revoked between being looked up and standing here.
      if (moment !== since) void look();
    },
    close: unwatch,
  };
}
