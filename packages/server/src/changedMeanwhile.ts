import { compareFiles } from "@lapline/contract";
import type { NewestBoard, Shop, WriteCondition } from "@lapline/store";
import { problem } from "./problem";

interface Refused {
  readonly boards: Shop["boards"];
  readonly condition: WriteCondition;
  /** The board file that was sent. */
  readonly text: string;
  readonly current: NewestBoard | null;
}

/**
 * The answer to a change of a board that was made on top of an older version: both versions, and field by field where they differ, with
 * what stood there before where that version is known. Nothing was kept.
 */
export async function changedMeanwhile({ boards, condition, text, current }: Refused): Promise<Response> {
  const before =
    current !== null && "ifRevision" in condition
      ? await boards.readRevision(current.id, condition.ifRevision)
      : null;
  return compareKept({ what: "board", text, current, before: before?.text ?? null });
}

interface Kept {
  readonly text: string;
  readonly version: number;
  readonly revision: string;
  readonly savedAt: string;
  readonly device: string;
}

interface Compared {
  readonly what: "board" | "record";
  readonly text: string;
  readonly current: Kept | null;
  readonly before: string | null;
}

export function compareKept({ what, text, current, before }: Compared): Response {
  if (current === null) {
    const detail = `The ${what} is not there any more. Nothing was kept.`;
    return problem({ status: 412, title: "Changed meanwhile", detail });
  }
  const [kept, sent] = [parse(current.text), parse(text)];
  const differences = compareFiles({ before: before === null ? undefined : parse(before), kept, sent });
  const detail = `The ${what} was changed elsewhere since it was read. Nothing of this change was kept; both versions are in this answer.`;
  const { version, revision, savedAt, device } = current;
  return problem(
    {
      status: 412,
      title: "Changed meanwhile",
      detail,
      kept: { version, revision, savedAt, device, file: kept },
      sent: { file: sent },
      differences,
    },
    { etag: `"${revision}"` },
  );
}

/** A file that was spoilt by hand is shown as the text it is. */
function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
