import type { Dice } from "../kit/arbitrary/dice.js";
import { documentShapes } from "../kit/document-shapes.js";
import type { FuzzedRequest } from "./fuzzed-request.js";
import type { Known } from "./graphql-requests.js";
import { hostileText, hostileValue } from "./hostile.js";

const upTo = (dice: Dice, most: number): number => 1 + dice.roll(dice.pick([10, most]));

const many = <T>(count: number, of: (at: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, at) => of(at));

/** A list of a household, as long as it falls, with what fits and what does not. */
const list = <T>(dice: Dice, of: (at: number) => T): readonly unknown[] =>
  many(upTo(dice, 400), (at) => (dice.chance(0.02) ? hostileValue(dice) : of(at)));

const household = (known: Known, dice: Dice): object => ({
  ...(dice.chance(0.5) ? { diets: list(dice, () => dice.pick(["vegan", "gluten-free", "none-such"])) } : {}),
  ...(dice.chance(0.5)
    ? { onHand: list(dice, (at) => ({ food: dice.pick(known.foods), amount: String(at), unit: "g" })) }
    : {}),
  ...(dice.chance(0.5)
    ? { swaps: list(dice, () => ({ from: dice.pick(known.foods), to: dice.pick(known.foods) })) }
    : {}),
});

const bodies: readonly ((known: Known, dice: Dice) => { readonly path: string; readonly body: unknown })[] = [
  (known, dice) => ({
    path: "/v1/shopping-list",
    body: {
      plans: many(upTo(dice, 120), (at) => ({
        ...{ publisher: dice.pick(known.publishers.slice(0, 1)), slug: dice.pick(known.plans), servings: at + 1 },
      })),
      household: household(known, dice),
    },
  }),
  (_, dice) => ({
    path: "/v1/read-lines",
    body: {
      texts: many(upTo(dice, 300), (at) => (dice.chance(0.5) ? `${String(at)} g ` : "") + hostileText(dice)),
      locale: dice.pick(["en", "de", "pl", "x"]),
      measures: "METRIC",
    },
  }),
  (_, dice) => ({
    path: dice.pick(["/v1/shopping-list", "/v1/read-lines", "/graphql"]),
    body: Object.fromEntries(many(upTo(dice, 60_000), (at) => [`k${String(at)}`, at])),
  }),
  (_, dice) => ({
    path: dice.pick(["/v1/shopping-list", "/v1/read-lines", "/graphql"]),
    body: many(upTo(dice, 1_000), (at) => at).reduce<unknown>(
      (inside) => (dice.chance(0.5) ? [inside] : { plans: inside }),
      1,
    ),
  }),
  ({ publishers }, dice) => ({
    path: "/graphql",
    body: {
      query:
        "query ($p: String!, $t: [DocumentTextInput!]!) { checkDocuments(publisher: $p, texts: $t) { problems { code } } }",
      variables: {
        p: publishers[0],
        t: many(upTo(dice, 40), (at) => ({
          name: `t${String(at)}.yaml`,
          text: documentShapes[dice.pick(Object.keys(documentShapes))]?.(upTo(dice, 20_000)) ?? "",
        })),
      },
    },
  }),
];

/** Long lists, many keys, deep values and many documents, within the size that a body may have. */
export function longRequest(known: Known, dice: Dice): FuzzedRequest {
  const { path, body } = dice.pick(bodies)(known, dice);
  const headers = { "content-type": "application/json" };
  return { method: "POST", path, headers, body: Buffer.from(JSON.stringify(body)) };
}
