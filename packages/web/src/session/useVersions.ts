import type { BoardFile } from "@lapline/contract";
import { tell } from "@lapline/present";
import { useCallback, useEffect, useMemo, useState } from "react";
import { listVersions, readVersion, type SavedVersion } from "../api/boardClient";
import { failureWords } from "../api/failureWords";
import { planner } from "../plan/tabPlanner";
import { useSettings } from "../settings/Settings";
import { problemLines } from "../shared/problemLines";
import type { SavingState } from "./SessionView";

interface Versions {
  /** Newest first. */
  readonly versions: readonly SavedVersion[];
  /** Why the list may not be whole. */
  readonly why: string | null;
  /** The file of one of them, or why it cannot be had. */
  readonly read: (version: number) => Promise<BoardFile | string>;
}

/** The saved versions of a board, listed anew whenever something was saved. */
export function useVersions(id: string, saving: SavingState["kind"]): Versions {
  const { reader } = useSettings();
  const t = useMemo(() => tell(reader), [reader]);
  const [versions, setVersions] = useState<readonly SavedVersion[]>([]);
  const [why, setWhy] = useState<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was saved since makes one more
  useEffect(() => {
    let isCurrent = true;
    listVersions(id).then(
      (listed) => {
        if (!isCurrent) return;
        setVersions(listed);
        setWhy(null);
      },
      (error: unknown) => isCurrent && setWhy(failureWords(error, t)),
    );
    return () => {
      isCurrent = false;
    };
  }, [id, saving, t]);
  const read = useCallback(
    async (version: number) => {
      try {
        const kept = await planner.plan(await readVersion(id, version));
        return kept.ok ? kept.file : problemLines(kept.problems, reader);
      } catch (error) {
        return failureWords(error, t);
      }
    },
    [id, t, reader],
  );
  return { versions, why, read };
}
