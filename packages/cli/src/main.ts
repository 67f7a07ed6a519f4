import { reasonOf } from "./reasonOf";
import { runCommand } from "./runCommand";
import type { Terminal } from "./Terminal";

/** Whoever reads our output may stop early, as `| head` does: that is no failure. A full disk is one, told in a line. */
for (const stream of [process.stdout, process.stderr]) {
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit();
    process.stderr.write(`The output could not be written: ${reasonOf(error)}.\n`);
    process.exit(2);
  });
}

const endLine = (text: string) => (text.endsWith("\n") ? text : `${text}\n`);

const terminal: Terminal = {
  input: process.stdin,
  print: (text) => process.stdout.write(endLine(text)),
  tell: (text) => process.stderr.write(endLine(text)),
  ...(process.stderr.isTTY
    ? { showProgress: (text: string) => process.stderr.write(`\r\u001b[K${text}`) }
    : {}),
  now: () => new Date(),
  stopAsked: () =>
    new Promise((resolve) => {
      for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => resolve());
    }),
};

// The exit code is set, not exited with, so that what was printed reaches a slow reader first.
process.exitCode = await runCommand(process.argv.slice(2), terminal);
