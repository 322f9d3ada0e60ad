import { createHash } from "node:crypto";
import { ApolloClient, gql as apolloGql, HttpLink, InMemoryCache } from "@apollo/client/core/index.js";
import { createPersistedQueryLink } from "@apollo/client/link/persisted-queries/index.js";
import { Client, fetchExchange, gql } from "@urql/core";
import { cacheExchange } from "@urql/exchange-graphcache";
import { getIntrospectionQuery, type IntrospectionQuery } from "graphql";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it, vi, type MockInstance } from "vitest";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";

/** As docs/graphql.md tells them: what has no id is a part of what has one. */
function keysOf({ __schema }: IntrospectionQuery): Record<string, () => null> {
  const parts = __schema.types.filter(
    (type) =>
      type.kind === "OBJECT" &&
      !type.name.startsWith("__") &&
      !["Query", "Mutation", "Subscription"].includes(type.name) &&
      !type.fields.some(({ name }) => name === "id"),
  );
  return Object.fromEntries(parts.map(({ name }) => [name, () => null]));
}

/** Without it Apollo Client takes the last answer's part in place of the one it has. It never puts two lists together, which could not be told apart. */
const mergedParts = (keys: Record<string, () => null>) =>
  Object.fromEntries(Object.keys(keys).map((name) => [name, { merge: true }]));

const page = `
  query Page($household: HouseholdInput) {
    plans(first: 3) {
      edges { cursor node { id slug title publisher { id name } scaling(servings: 4, household: $household) {
        scaled { title meals { meal { id title } lines { amount { text unit { code } } food { id name } component { id title } } } warnings { code title text parameters { name values } } }
        problems { code where title text parameters { name values } }
      } } }
      pageInfo { hasNextPage endCursor }
    }
  }`;
/** Other parts of the same objects: a cache has to put them together with those it has. */
const detail = `
  query Detail($household: HouseholdInput) {
    plan(publisher: "third-gate-allotments", slug: "eggs-and-oats") {
      id planId updatedAt meals { id mealId day } components { id componentId yield { text } lines { partName food { id name } } } foods { id name aisleName }
      scaling(servings: 4, household: $household) {
        scaled { servings meals { factor meal { id day } } shoppingList { aisles { name lines { food { id slug name packs { name content { text } } } toTake } } cost { atTill { amount } } } storage { place days } }
        problems { code message }
      }
    }
  }`;
const households = [{}, { locale: "de", region: "GB" }, { diets: ["vegn"] }, { locale: "de", diets: ["vegn"] }];

describeOnEmbedded("caching clients", (open) => {
  let app: TestApp;
  let url = "";
  let introspection: IntrospectionQuery;
  let sent: { readonly method: string; readonly text: string }[] = [];
  let told: MockInstance[] = [];
  const watchedFetch: typeof fetch = async (target, init) => {
    const text = target instanceof Request ? target.url : String(target);
    sent.push({ method: init?.method ?? "GET", text: `${text} ${typeof init?.body === "string" ? init.body : ""}` });
    return fetch(target, init);
  };

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    url = `${await app.app.listen({ port: 0, host: "127.0.0.1" })}/graphql`;
    introspection = (await app.ask(getIntrospectionQuery())).data as unknown as IntrospectionQuery;
  });
  afterAll(() => app.close());
  beforeEach(() => {
    sent = [];
    told = (["warn", "error"] as const).map((name) => vi.spyOn(console, name).mockImplementation(() => undefined));
  });
  afterEach(() => {
    for (const spy of told) expect(spy.mock.calls).toEqual([]);
    vi.restoreAllMocks();
  });

  it("urql with a normal cache: no warning, no object of one language in another, and what is known is not asked again", async () => {
    const client = new Client({
      url,
      preferGetMethod: false,
      fetch: watchedFetch,
      exchanges: [cacheExchange({ schema: introspection, keys: keysOf(introspection) }), fetchExchange],
    });
    const ask = async (document: string, household: object) => {
      const { data, error } = await client.query(gql(document), { household }).toPromise();
      expect(error).toBeUndefined();
      return data as unknown;
    };
    const first: unknown[] = [];
    for (const household of households)
      for (const document of [page, detail]) first.push(await ask(document, household));
    const asked = sent.length;
    const again: unknown[] = [];
    for (const household of households)
      for (const document of [page, detail]) again.push(await ask(document, household));
    expect(again).toEqual(first);
    expect(sent).toHaveLength(asked);
    expect(JSON.stringify(first[0])).not.toBe(JSON.stringify(first[2]));
  });

  it("Apollo Client with hashes over GET: no warning, and what is known is not asked again", async () => {
    const sha256 = (text: string) => createHash("sha256").update(text).digest("hex");
    const client = new ApolloClient({
      link: createPersistedQueryLink({ sha256, useGETForHashedQueries: true }).concat(
        new HttpLink({ uri: url, fetch: watchedFetch }),
      ),
      cache: new InMemoryCache({
        possibleTypes: Object.fromEntries(
          introspection.__schema.types.flatMap((type) =>
            type.kind === "INTERFACE" || type.kind === "UNION"
              ? [[type.name, type.possibleTypes.map(({ name }) => name)] as const]
              : [],
          ),
        ),
        typePolicies: mergedParts(keysOf(introspection)),
      }),
    });
    const ask = async (document: string, household: object) => {
      const { data, errors } = await client.query({ query: apolloGql(document), variables: { household } });
      expect(errors).toBeUndefined();
      return data as unknown;
    };
    for (const household of households)
      for (const document of [page, detail]) {
        const first = await ask(document, household);
        const asked = sent.length;
        expect(await ask(document, household)).toEqual(first);
        expect(sent).toHaveLength(asked);
      }
    expect(sent.filter(({ method, text }) => method === "GET" && text.includes("sha256Hash")).length).toBeGreaterThan(
      5,
    );
    client.stop();
  });
});
