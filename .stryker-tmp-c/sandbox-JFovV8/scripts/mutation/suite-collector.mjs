// @ts-nocheck
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  getState,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";
import { format } from "node:util";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

const expect = Object.assign(
  (actual, message) => chai.expect(actual, message),
  chai.expect,
  globalThis[ASYMMETRIC_MATCHERS_OBJECT],
);
expect.extend = (matchers) => chai.expect.extend(expect, matchers);
globalThis[GLOBAL_EXPECT] = expect;
setState({ assertionCalls: 0, ...getState(expect) }, expect);

let tests = [];
let preparations = [];
let titles = [];
let taken = new Map();

function it(title, run) {
  const name = [...titles, title].join(" ");
  const before = taken.get(name) ?? 0;
  taken.set(name, before + 1);
  tests.push({ name: before === 0 ? name : `${name} (${before + 1})`, run });
}

it.each = (rows) => (title, run) => {
  for (const row of rows) {
    const values = Array.isArray(row) ? row : [row];
    const places = title.match(/%[sdifjoO]/g)?.length ?? 0;
    it(format(title, ...values.slice(0, places)), () => run(...values));
  }
};

function describe(title, declare) {
  titles.push(title);
  declare();
  titles.pop();
}

/**
 * What the engine's suites use of Vitest, in a shape that can be collected again and again in one process; `expect` is
 * Vitest's own. A suite that wants more of Vitest is not bundled, and the message names what is missing.
 */
export const vitest = { beforeAll: (run) => preparations.push(run), describe, it, expect };

/**
 * Loads one suite.
 *
 * @param {() => Promise<unknown>} load
 * @returns {Promise<{ preparations: (() => unknown)[], tests: { name: string, run: () => unknown }[] }>}
 */
export async function collect(load) {
  tests = [];
  preparations = [];
  titles = [];
  taken = new Map();
  await load();
  return { preparations, tests };
}
