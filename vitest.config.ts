import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  // Vite would take graphql's ES module and Node its CommonJS one; two copies of graphql do not know each other's types.
  resolve: {
    alias: [
      {
        find: "prepwright-client",
        replacement: fileURLToPath(new URL("clients/typescript/src/index.ts", import.meta.url)),
      },
      { find: /^graphql$/, replacement: fileURLToPath(import.meta.resolve("graphql")) },
    ],
  },
  test: {
    include: ["tests/**/*.test.ts"],
    // These need a browser (npm run test:browser), Debian's PostgreSQL and pooler (npm run test:machines), other versions of Node
    // (npm run test:nodes), and the package registry (npm run test:release).
    exclude: ["tests/browser/**", "tests/machines/**", "tests/nodes/**", "tests/release/**"],
    globalSetup: ["tests/kit/postgres/postgres-server.ts"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    pool: "forks",
    maxWorkers: 2,
  },
});
