import * as fastCheck from "fast-check";
import { basename, resolve } from "node:path";
import { performance } from "node:perf_hooks";
import { requireFrom } from "../tool-folder.mjs";
import { bundleSuites } from "./bundle-suites.mjs";
import { collect, vitest } from "./suite-collector.mjs";

const stryker = requireFrom("mutation");
const { INSTRUMENTER_CONSTANTS } = stryker("@stryker-mutator/api/core");
const { declareFactoryPlugin, PluginKind } = stryker("@stryker-mutator/api/plugin");
const { DryRunStatus, determineHitLimitReached, TestStatus, toMutantRunResult } = stryker(
  "@stryker-mutator/api/test-runner",
);

/** The engine's own suites, which need no database. */
const folders = ["component", "plan", "quantity", "shopping"].map((name) => `tests/domain/${name}`);

/** Left out for their length. What they alone would notice counts as not noticed, so the figure is too low rather than too high. */
const leftOut = ["hostile-input.test.ts", "whole-household.test.ts"];

/** Tests of very large inputs, walks over every value there is, and the shelves that the integer program takes long over. */
const isTooLong = (name) =>
  /is a gap that rounds|ten thousand|two thousand|largest size|megabyte|\(shelf [1245]\)/.test(name);

/** Most examples a property is tried on for one mutant; always the same ones, so that a figure can be had again. */
const mostExamples = 20;
const seed = 20260401;

const assert = (property, given = {}) =>
  fastCheck.assert(property, { seed, ...given, numRuns: Math.min(given.numRuns ?? 100, mostExamples) });

const replaced = {
  vitest,
  "fast-check": { ...fastCheck, assert, default: { ...fastCheck.default, assert } },
};

/** A suite fails before its first test where a mutant keeps a module from loading: that is a test as well. */
const loading = "loads";

/** Suites that try many examples, or read all seeds. */
const isLong = ({ text }) => /fast-check|kit\/arbitrary|kit\/dice|hostile|readSeeds/.test(text);

/**
 * What a mutant is tried against: the suite named after its file, then its folder's, then the others, long ones later. Most
 * mutants fall at once, and the first failure is enough. Long suites of other folders are passed over.
 */
function nearestFirst(suites, mutated) {
  const [, folder = ""] = /\/src(\/domain\/[^/]+\/)/.exec(mutated) ?? [];
  const own = `${basename(mutated, ".ts")}.test.ts`;
  const order = (suite) => {
    const near = basename(suite.path) === own ? 0 : suite.path.includes(folder) ? 1 : 2;
    return 2 * near + Number(isLong(suite));
  };
  return suites
    .map((suite) => ({ suite, at: order(suite) }))
    .filter(({ at }) => at < 5)
    .sort((one, other) => one.at - other.at)
    .map(({ suite }) => suite);
}

/**
 * Runs the suites in Stryker's own process, all modules new for each mutant. A run in Vitest costs a thread and the loading of
 * every suite for each mutant, and counts a mutant that keeps modules from loading as one that survived.
 */
class EngineTestRunner {
  /** What the mutants and their runner tell each other. */
  #shared = (globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {});
  #bundle;

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    console.log = () => {};
    this.#bundle = await bundleSuites(
      folders.map((folder) => resolve(folder)),
      leftOut,
      replaced,
    );
  }

  async dryRun() {
    const shared = this.#shared;
    shared.activeMutant = undefined;
    const tests = await this.#run(this.#bundle.suites, {
      // What one suite left in a cache would hide that another uses it as well.
      eachAnew: true,
      around: async (id, run) => {
        shared.currentTestId = id;
        await run();
        shared.currentTestId = undefined;
      },
    });
    return { status: DryRunStatus.Complete, tests, mutantCoverage: shared.mutantCoverage };
  }

  async mutantRun({ activeMutant, disableBail, hitLimit, mutantActivation, sandboxFileName, testFilter }) {
    const shared = this.#shared;
    const wanted = testFilter && new Set(testFilter);
    const files = wanted && new Set(testFilter.map((id) => id.slice(0, id.indexOf("#"))));
    const suites = nearestFirst(this.#bundle.suites, sandboxFileName).filter(({ path }) => files?.has(path) ?? true);
    shared.hitCount = 0;
    shared.hitLimit = hitLimit;
    shared.activeMutant = mutantActivation === "static" ? activeMutant.id : undefined;
    const tests = await this.#run(suites, {
      bail: !disableBail,
      wanted,
      around: async (_, run) => {
        shared.activeMutant = activeMutant.id;
        await run();
        if (mutantActivation !== "static") shared.activeMutant = undefined;
      },
    });
    shared.activeMutant = undefined;
    const outOfBounds = determineHitLimitReached(shared.hitCount, hitLimit);
    return toMutantRunResult(outOfBounds ?? { status: DryRunStatus.Complete, tests });
  }

  async #run(suites, { around, bail = false, eachAnew = false, wanted }) {
    let loads = await this.#bundle.evaluate();
    const results = [];
    const attempt = async (path, name, run) => {
      const result = { id: `${path}#${name}`, name, fileName: path, status: TestStatus.Success };
      const start = performance.now();
      try {
        await run();
      } catch (error) {
        result.status = TestStatus.Failed;
        result.failureMessage = String(error?.message ?? error);
      }
      results.push({ ...result, timeSpentMs: performance.now() - start });
      return result.status === TestStatus.Success;
    };
    for (const { path } of suites) {
      if (eachAnew) loads = await this.#bundle.evaluate();
      let collected;
      const loaded = await attempt(path, loading, async () => {
        collected = await collect(loads.get(path));
        for (const prepare of collected.preparations) await prepare();
      });
      if (!loaded && bail) return results;
      for (const { name, run } of collected?.tests ?? []) {
        const id = `${path}#${name}`;
        if (isTooLong(name) || (wanted !== undefined && !wanted.has(id))) continue;
        const passed = await attempt(path, name, () => around(id, run));
        if (!passed && bail) return results;
      }
    }
    return results;
  }
}

export const strykerPlugins = [declareFactoryPlugin(PluginKind.TestRunner, "engine", () => new EngineTestRunner())];
