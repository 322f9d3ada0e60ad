import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { result, type Benchmark, type BenchmarkResult } from "./benchmark.js";
import { graphqlRequest } from "./load/load-job.js";
import { against, asked, onStage, shown } from "./load/side-by-side.js";

/** A nested read of tables that both have: foods with their names and packs. */
const ours = /* GraphQL */ `
  {
    foods(first: 50) {
      edges {
        node {
          slug
          aisle
          names {
            one
          }
          packs {
            code
            name
            region
            seen
          }
        }
      }
    }
  }
`;

const theirs = /* GraphQL */ `
  {
    foods: allFoodsList(first: 50, orderBy: SLUG_ASC) {
      slug
      aisle
      names: foodWordsByFoodIdList(orderBy: PRIMARY_KEY_ASC, condition: { place: 0 }) {
        one: text
      }
      packs: packsByFoodIdList(orderBy: PRIMARY_KEY_ASC) {
        code: id
        name
        region
        seen
      }
    }
  }
`;

const folder = "bench/generated";

/** Its packages are its own, with their own lockfile: installed the first time. */
function install(): void {
  if (existsSync(`${folder}/node_modules`)) return;
  execFileSync("npm", ["ci", "--ignore-scripts"], { cwd: folder, stdio: ["ignore", 2, 2] });
}

/** The same nested read from a general-purpose server that is generated from the same tables. */
const generatedServer = (): Promise<readonly BenchmarkResult[]> => {
  install();
  return onStage(async ({ client, url, service, start }) => {
    const [plain, kept, other] = await Promise.all([
      service({ PREPWRIGHT_CACHE_MB: "0" }),
      service(),
      start([`${folder}/server.cjs`, url]),
    ]);
    const generated = { port: other.port, request: graphqlRequest({ query: theirs }) };
    const cold = { port: plain.port, request: graphqlRequest({ query: ours }) };
    const hot = { port: kept.port, request: graphqlRequest({ query: ours }) };
    const { data: mine } = JSON.parse((await asked(cold)).text) as {
      readonly data: { readonly foods: { readonly edges: readonly { readonly node: unknown }[] } };
    };
    const { data: its } = JSON.parse((await asked(generated)).text) as { readonly data: { readonly foods: unknown } };
    if (JSON.stringify(mine.foods.edges.map(({ node }) => node)) !== JSON.stringify(its.foods)) {
      throw new Error("the generated server answers something else");
    }
    const computed = await against(client, cold, generated);
    const remembered = await against(client, hot, generated);
    await Promise.all([plain.stop(), kept.stop(), other.stop()]);
    const detail = ({ ours: a, theirs: b }: typeof computed): string => `${shown(a)}, ${shown(b)}`;
    return [
      result(
        "foods with packs, nothing in memory / generated server",
        computed.ratio,
        { atLeast: 1 },
        detail(computed),
      ),
      result("foods with packs, asked before / generated server", remembered.ratio, { atLeast: 1 }, detail(remembered)),
    ];
  });
};

export const generatedBenchmark: Benchmark = { name: "generated-server", isLong: true, run: generatedServer };
