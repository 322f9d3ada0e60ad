import { defineConfig, mergeConfig } from "vitest/config";
import base from "./vitest.config.js";

const config = mergeConfig(base, defineConfig({}));

/** The suites that install and start what users get. They need the package registry, and some minutes. */
export default {
  ...config,
  test: {
    ...config.test,
    include: ["tests/release/**/*.test.ts"],
    exclude: [],
    maxWorkers: 1,
    testTimeout: 600_000,
    hookTimeout: 900_000,
  },
};
