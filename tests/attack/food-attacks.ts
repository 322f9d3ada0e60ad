import { around, graphql, listOf, post, times, type AttackRequest, type Target } from "./attack-request.js";

/** Texts that thousands of names begin with, that none does, and that are no words. */
const searches = ["a b c d e f g h", "a ".repeat(60), "e", "xq".repeat(19), "ſ".repeat(40), "o'".repeat(30)];

/** Foods of a publisher's own, and lines that are read with them. */
export function foodAttacks({ publisher, foods, plans }: Target): readonly AttackRequest[] {
  const p = JSON.stringify(publisher);
  const nobody = JSON.stringify("a".repeat(5_000));
  const page = (filter: string, first: number): string =>
    `foods(first: ${String(first)}, filter: { ${filter} }) { edges { cursor node { slug owner { slug } } } }`;
  const searched = searches.flatMap((search) =>
    [p, nobody].map((owner) =>
      graphql(
        `30 searches of a publisher's foods for ${search.slice(0, 16)}`,
        `{ ${times(30, (at) => `a${String(at)}: ${page(`publisher: ${owner}, search: ${JSON.stringify(`${search}${String(at)}`)}`, 3)}`)} }`,
      ),
    ),
  );
  const pages = [1, 100, 10_000].map((first) =>
    graphql(`a publisher's foods by ${String(first)}`, `{ ${page(`publisher: ${p}`, first)} }`),
  );
  const named = [1, 30].map((count) =>
    graphql(
      `${String(count)} foods as a publisher has them`,
      `{ ${times(count, (at) => `a${String(at)}: food(publisher: ${at % 2 === 0 ? p : nobody}, slug: "${around(foods, at)}") { slug owner { slug } names { one } }`)} }`,
    ),
  );
  const written = (at: number): string =>
    `${String(at + 1)} 1/2 cups of ${around(foods, at).replaceAll("-", " ")} or ${around(plans, at)}, rinsed`;
  const long = (at: number): string => `${written(at)} `.repeat(20).slice(0, 500);
  const asked = { locale: "de", measures: "METRIC" };
  const lines = [written, long].flatMap((text, kind) => {
    const rest = post(`200 lines of kind ${String(kind)}`, "/v1/read-lines", { ...asked, texts: listOf(200, text) });
    const own = [publisher, "nobody-here", "\0", "a".repeat(5_000)].flatMap((owner) => {
      const request = graphql(
        `200 lines of kind ${String(kind)} with what ${owner.slice(0, 22)} has`,
        'query ($t: [String!]!, $p: String) { readLines(texts: $t, locale: "de", publisher: $p) { lines { written } } }',
        { t: listOf(200, text), p: owner },
      );
      return [request, { ...request, authorised: true as const }];
    });
    return [rest, ...own];
  });
  return [...searched, ...pages, ...named, ...lines, ...changes(publisher, foods)];
}

/** Changes that must be refused, or that change nothing a reader sees. */
function changes(publisher: string, foods: readonly string[]): readonly AttackRequest[] {
  const numbers = ["11297", "99999", "00000", "1", "-1234", "1e999", "\0", "1".repeat(5_000)];
  const adopt = (fields: Readonly<Record<string, unknown>>, name: string) =>
    graphql(
      `a food adopted: ${name}`,
      "mutation ($input: AdoptFoodInput!) { adoptFood(input: $input) { problems { code message } } }",
      { input: { publisher, ...fields } },
    );
  const adopted = [
    ...numbers.map((ndbNo) => adopt({ ndbNo }, `number ${ndbNo.slice(0, 8)}`)),
    adopt({ ndbNo: "11297", slug: "a-".repeat(3_000) }, "a long slug"),
    adopt({ ndbNo: "11297", name: "a ".repeat(50_000) }, "a long name"),
    adopt({ ndbNo: "11297", slug: around(foods, 0), name: "%" }, "the slug of another"),
    adopt({ ndbNo: "11297", slug: "a\0b" }, "a slug with a NUL"),
  ];
  const unpublish = (slug: string, reason: string, name: string) =>
    graphql(
      `a plan taken back: ${name}`,
      "mutation ($input: UnpublishPlanInput!) { unpublishPlan(input: $input) { problems { code message } } }",
      { input: { publisher, slug, reason } },
    );
  const taken = [
    unpublish("nothing-here", "because", "that is not there"),
    unpublish("nothing-here", "because ".repeat(50_000), "for a long reason"),
    unpublish("x".repeat(100_000), "", "of a long name"),
    unpublish("\0", "\0", "of a NUL"),
    graphql(
      "30 plans taken back at once",
      `mutation { ${times(30, (at) => `a${String(at)}: unpublishPlan(input: { publisher: "${publisher}", slug: "nothing-${String(at)}", reason: "because" }) { problems { code } }`)} }`,
    ),
  ];
  const each = [...adopted, ...taken];
  return [...each, ...each.map((request): AttackRequest => ({ ...request, authorised: true }))];
}
