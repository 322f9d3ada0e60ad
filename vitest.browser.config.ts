import { defineConfig, mergeConfig } from "vitest/config";
import base from "./vitest.config.js";

const config = mergeConfig(base, defineConfig({}));

/** The suites that open pages in a real Chromium. */
export default {
  ...config,
  test: { ...config.test, include: ["tests/browser/**/*.test.ts"], exclude: [], maxWorkers: 1 },
};
