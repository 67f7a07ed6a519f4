const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  ENOTDIR: "a file stands where a folder is named",
  EEXIST: "a file stands where a folder is named",
  EISDIR: "it is a folder",
  EACCES: "this user has no right to it",
  EPERM: "this user has no right to it",
  EROFS: "it can only be read",
  ENOSPC: "the disk is full",
};

/** Why the file system refused, in plain words; `here` are better words for some codes where it was asked. */
export function reasonOf(error: unknown, here: Readonly<Record<string, string>> = {}): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  return here[code] ?? REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}
