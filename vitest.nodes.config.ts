import base from "./vitest.config.js";

const graphql = [
  "document-limits",
  "explorer",
  "faults",
  "known-documents",
  "over-http",
  "publishing",
  "queries",
  "scalars",
  "time-limit",
  "tokens",
  "webhooks",
];
const rest = ["caching", "forms", "lists", "plan", "problems", "time-limit", "vocabulary", "ways-out"];

/**
 * What scripts/test-nodes.mjs runs on each newer version of Node: the built program, and those suites that meet what versions
 * differ in (HTTP, time, Intl, files, packages), as many as take less than two minutes a version on two idle cores.
 */
export default {
  ...base,
  test: {
    ...base.test,
    include: [
      "tests/nodes/**/*.test.ts",
      ...["cli", "cli-alone", "job-queue", "start-and-stop"].map((name) => `tests/app/${name}.test.ts`),
      "tests/domain/**/*.test.ts",
      ...graphql.map((name) => `tests/graphql/${name}.test.ts`),
      ...rest.map((name) => `tests/rest/${name}.test.ts`),
    ],
    // Long searches and many random plans, which say nothing of Node.
    exclude: ["**/hostile-input.test.ts", "**/solve-rcpsp.test.ts", "**/whole-household.test.ts"],
  },
};
