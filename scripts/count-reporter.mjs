/** Prints one last plain line, "N passed, N failed, N skipped", that a build server can read as a test count. */
export default class CountReporter {
  onTestRunEnd(modules, unhandledErrors) {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state in count) count[state] += 1;
      }
      // A file that could not be loaded has run no test, yet it must not look like a pass.
      if (module.errors().length > 0) count.failed += 1;
    }
    count.failed += unhandledErrors.length;
    process.stdout.write(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
  }
}
