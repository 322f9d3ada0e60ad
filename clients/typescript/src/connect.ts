import createClient, { type Client } from "openapi-fetch";
import { answerOf, type Answer } from "./answer.js";
import type { paths } from "./generated/rest.js";
import { readGraphql, type GraphqlAnswer, type Operation } from "./graphql.js";
import type * as Of from "./questions.js";

export interface ConnectOptions {
  /** Where the service is: `https://plans.example`. */
  readonly address: string;
  /** An access token, for what not anybody may ask. */
  readonly token?: string;
  /** Left out: the `fetch` of the platform. */
  readonly fetch?: (request: Request) => Promise<Response>;
}

export interface Prepwright {
  /** One page of the plans that are in force. */
  plans(filter?: Of.PlanFilter): Promise<Answer<Of.PlanPage>>;
  /** Page after page, until the last or one that failed. */
  planPages(filter?: Of.PlanFilter): AsyncGenerator<Answer<Of.PlanPage>, void>;
  /** Everything that the service says about a plan, computed for one household. */
  plan(name: Of.PlanName, household?: Of.Household): Promise<Answer<Of.Plan>>;
  /** Parts of it, in an eighth of the bytes. */
  planParts(name: Of.PlanName, parts: Of.PlanParts): Promise<Answer<Of.BriefPlan>>;
  planText(name: Of.PlanName, form: Of.TextForm, household?: Of.Household): Promise<Answer<string>>;
  /** One list for several plans. */
  shoppingList(question: Of.ShoppingListQuestion): Promise<Answer<Of.ShoppingListAnswer>>;
  /** What is new. Keep `end` of the answer, and pass it as `after` the next time. */
  changes(filter?: Of.ChangeFilter): Promise<Answer<Of.ChangePage>>;
  changePages(filter?: Of.ChangeFilter): AsyncGenerator<Answer<Of.ChangePage>, void>;
  /** Names of every closed list, for forms and filters. */
  vocabulary(locale?: string): Promise<Answer<Of.Vocabulary>>;
  graphql<Data, Variables>(operation: Operation<Data, Variables>, variables: Variables): Promise<GraphqlAnswer<Data>>;
  /** Every address of the service, typed from its description. */
  readonly rest: Client<paths>;
}

interface Page {
  /** Address of the next one, after the service's. */
  readonly next: string | null;
}

/** Stops after a page that failed: what comes after it is not known. */
async function* pages<P extends Page>(
  first: Promise<Answer<P>>,
  follow: (address: string) => Promise<Answer<P>>,
): AsyncGenerator<Answer<P>, void> {
  let asking: Promise<Answer<P>> | null = first;
  while (asking !== null) {
    const page: Answer<P> = await asking;
    yield page;
    asking = page.ok && page.data.next !== null ? follow(page.data.next) : null;
  }
}

/** Asks one service: `connect({ address: "http://127.0.0.1:4000" })`. */
export function connect({
  address,
  token,
  fetch = (request) => globalThis.fetch(request),
}: ConnectOptions): Prepwright {
  const baseUrl = address.replace(/\/+$/, "");
  const headers = token === undefined ? {} : { authorization: `Bearer ${token}` };
  const rest = createClient<paths>({ baseUrl, headers, fetch });
  const plans: Prepwright["plans"] = (query = {}) => answerOf(rest.GET("/v1/plans", { params: { query } }));
  const changes: Prepwright["changes"] = (query = {}) => answerOf(rest.GET("/v1/changes", { params: { query } }));
  return {
    rest,
    plans,
    planPages: (filter) => pages(plans(filter), (next) => answerOf(rest.GET(next as "/v1/plans"))),
    plan: (path, query = {}) =>
      answerOf(rest.GET("/v1/plans/{publisher}/{slug}.json", { params: { path: { ...path }, query } })),
    planParts: (path, query) =>
      answerOf(rest.GET("/v1/plans/{publisher}/{slug}.brief", { params: { path: { ...path }, query } })),
    planText: (path, form, query = {}) =>
      answerOf(
        rest.GET(`/v1/plans/{publisher}/{slug}.${form}`, {
          params: { path: { ...path }, query },
          parseAs: "text" as const,
        }),
      ),
    shoppingList: (body) => answerOf(rest.POST("/v1/shopping-list.json", { body })),
    changes,
    changePages: (filter) => pages(changes(filter), (next) => answerOf(rest.GET(next as "/v1/changes"))),
    vocabulary: (locale) =>
      answerOf(rest.GET("/v1/vocabulary", { params: { query: locale === undefined ? {} : { locale } } })),
    graphql: async (operation, variables) =>
      readGraphql(
        await fetch(
          new Request(`${baseUrl}/graphql`, {
            method: "POST",
            headers: {
              ...headers,
              "content-type": "application/json",
              accept: "application/graphql-response+json, application/json",
            },
            body: JSON.stringify({ query: operation.toString(), variables }),
          }),
        ),
      ),
  };
}
