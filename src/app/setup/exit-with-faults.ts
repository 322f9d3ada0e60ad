/** Lists everything the caller got wrong and exits with 2. */
export function exitWithFaults(faults: readonly string[]): never {
  process.stderr.write(`Cannot start:\n${faults.map((fault) => `  ${fault}\n`).join("")}`);
  process.exit(2);
}
