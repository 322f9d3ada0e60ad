/** Lists everything that is wrong with the environment and exits with 2. */
export function exitWithFaults(faults: readonly string[]): never {
  process.stderr.write(`The environment is wrong:\n${faults.map((fault) => `  ${fault}\n`).join("")}`);
  process.exit(2);
}
