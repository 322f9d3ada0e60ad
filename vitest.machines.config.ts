import base from "./vitest.config.js";

/** The suites that need what Debian brings: a streaming replica, a pooler, several processes of the service. */
export default {
  ...base,
  test: { ...base.test, include: ["tests/machines/**/*.test.ts"], exclude: [], globalSetup: [], maxWorkers: 1 },
};
