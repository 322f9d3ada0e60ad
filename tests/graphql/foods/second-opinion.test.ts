import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { lacks } from "../../imports/base-foods/coverage.js";
import { englishAndGerman, others } from "../../imports/base-foods/second-opinion.js";
import { readBase } from "../../kit/base-foods.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const asked: readonly (readonly [locale: string, words: readonly string[]])[] = [
  ["en-GB", englishAndGerman.map(([en]) => en)],
  ["de-DE", englishAndGerman.map(([, de]) => de)],
  ["fr-FR", others.fr],
  ["es-ES", others.es],
  ["pl-PL", others.pl],
];

interface ReadLine {
  readonly takes: readonly { readonly food: string }[];
  readonly mayName: readonly string[];
}

/** The most foods between which a question still helps. */
const fewest = 4;

describeOnEmbedded("foods of a second opinion, asked of the service", (open) => {
  let app: TestApp;
  let base: ReadonlyMap<string, Food>;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    const { edition, foods, whole } = await readBase();
    await app.deps.data.foods.loadBase(edition, "0".repeat(64), foods);
    base = new Map(whole.map((food) => [food.slug, food]));
  }, 120_000);
  afterAll(() => app.close());

  /** At least 95 % of a list are found, and 90 % are described whole. */
  function expectKnown(words: readonly string[], found: readonly (readonly string[])[]): void {
    const lost = words.filter((_, at) => (found[at] ?? []).length === 0);
    const half = words.filter((_, at) => {
      const foods = (found[at] ?? []).map((slug) => base.get(slug));
      return foods.length === 0 || foods.some((food) => food === undefined || lacks(food).length > 0);
    });
    expect(lost.length, lost.join(", ")).toBeLessThanOrEqual(0.05 * words.length);
    expect(half.length, half.join(", ")).toBeLessThanOrEqual(0.1 * words.length);
  }

  async function readLines(words: readonly string[], locale: string): Promise<readonly (readonly string[])[]> {
    // 100 g would be less than anybody takes of a pumpkin, and a question.
    const texts = words.map((each) => `500 g ${each}`);
    const { body } = await request(app.app.server).post("/v1/read-lines").send({ locale, texts }).expect(200);
    return (body as { readonly lines: readonly ReadLine[] }).lines.map(({ takes, mayName }) => {
      const slugs = takes.length > 0 ? takes.map(({ food }) => food) : mayName;
      return slugs.length > fewest ? [] : slugs;
    });
  }

  /** The first few of a search, best first. */
  async function search(words: readonly string[]): Promise<readonly (readonly string[])[]> {
    const found: (readonly string[])[] = [];
    for (let at = 0; at < words.length; at += 10) {
      const some = words.slice(at, at + 10);
      const fields = some.map(
        (each, of) =>
          `f${of}: foods(first: ${fewest}, filter: { search: ${JSON.stringify(each)} }) { edges { node { slug } } }`,
      );
      const { data, errors } = await app.ask(`{ ${fields.join("\n")} }`);
      expect(errors).toEqual([]);
      const answer = data as Record<
        string,
        { readonly edges: readonly { readonly node: { readonly slug: string } }[] }
      >;
      found.push(...some.map((_, of) => (answer[`f${of}`]?.edges ?? []).map(({ node }) => node.slug)));
    }
    return found;
  }

  describe.each(asked)("in %s", (locale, words) => {
    it("are found in lines to 95 %, and described whole to 90 %", async () => {
      expectKnown(words, await readLines(words, locale));
    });

    it("are found by a search, which has what a line means among its first few", async () => {
      const [inLines, searched] = [await readLines(words, locale), await search(words)];
      const meant = searched.map((slugs, at) => slugs.filter((slug) => (inLines[at] ?? []).includes(slug)));
      expectKnown(words, meant);
    });
  });
});
