import { defineConfig } from "vitest/config";

/** What a mutant of the engine is tried against: the engine's own suites, which need no database. */
export default defineConfig({
  test: {
    include: ["tests/domain/{component,plan,quantity,shopping}/**/*.test.ts"],
    testTimeout: 60_000,
    pool: "forks",
  },
});
