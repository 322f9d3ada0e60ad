import { z } from "zod";
import type { Food } from "../../domain/model/food.js";
import { componentJson, componentSchema } from "../../exports/json/component.js";
import { foodJson, foodSchema } from "../../exports/json/food.js";
import { pageSchema } from "../../exports/json/page-schema.js";
import { thingsOf } from "../../exports/json/named-thing.js";
import { list, named, text } from "../../exports/json/named-schema.js";
import type { Deps, PublishedRevision } from "../../services/deps.js";
import type { CatalogueFood } from "../../services/foods/find-catalogue-foods.js";
import { openTableCandidates } from "../../services/foods/open-table-candidates.js";
import { findComponentHome } from "../../services/plans/find-component.js";
import { anyone } from "../../services/access/actor.js";
import { findOwnFood } from "../../services/foods/find-own-food.js";
import { findFoods } from "../../services/foods/find-foods.js";
import { listFoods } from "../../services/foods/list-foods.js";
import { writersShow } from "../../exports/words/shown-amount.js";
import { asJson, endpoint, found, refused, type Found } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inPath, inQuery, one } from "../parameter.js";
import { planName } from "../plan-request.js";
import { notFound } from "../refusal.js";

const tag = { method: "GET", tag: "catalogue", caching: "LIVE" } as const;

interface ComponentHome {
  readonly slug: string;
  readonly home: PublishedRevision;
}

export const componentEndpoint = endpoint(
  {
    ...tag,
    path: "/v1/components/{publisher}/{slug}",
    operationId: "getComponent",
    summary: "A component, as written",
    description: "From the newest revision in force that holds it.",
    parameters: [inPath("publisher", "Slug of the publisher."), inPath("slug", "Slug of the component.")],
    refusals: ["not-found"],
  },
  async (question) => {
    const { slug, publisher } = planName(question);
    const home = await findComponentHome(question.deps, { slug, publisher });
    if (home !== null) return found({ slug, home });
    const path: readonly string[] = [];
    return refused(notFound("There is no such component.", [{ code: "UNKNOWN_COMPONENT", path, component: slug }]));
  },
  [
    asJson(componentSchema, "The component.", ({ slug, home }: ComponentHome) =>
      componentJson(slug, home.revision, thingsOf(home.bundle, writersShow(home.bundle.plan))),
    ),
  ],
);

export const foodEndpoint = endpoint(
  {
    ...tag,
    path: "/v1/foods/{slug}",
    operationId: "getFood",
    summary: "A food as it is known today",
    description: "Its own facts first, then those of the open food table, each with its source.",
    parameters: [
      inPath("slug", "Slug of the food."),
      inQuery("publisher", "Slug of a publisher whose own food goes first, as its newest published plan has it."),
    ],
    refusals: ["not-found"],
  },
  async ({ deps, path, query }) => {
    const slug = path["slug"] ?? "";
    const publisher = one(query, "publisher");
    const food =
      publisher === null ? (await findFoods(deps, [slug]))[0] : await findOwnFood(deps, anyone, { publisher, slug });
    return food
      ? found(food)
      : refused(notFound("There is no such food.", [{ code: "UNKNOWN_FOOD", path: [], food: slug }]));
  },
  [asJson(foodSchema, "The food.", foodJson)],
);

interface FoodPage extends LinkedPage<Food> {
  readonly openTable: readonly CatalogueFood[];
}

async function foodPage(deps: Deps, search: string | null, page: Found<LinkedPage<Food>>): Promise<Found<FoodPage>> {
  if (!page.ok) return page;
  return { ...page, value: { ...page.value, openTable: await openTableCandidates(deps, search, page.value.items) } };
}

const openTableRow = named(
  "OpenTableRow",
  "A row of the open food table: adopt it, or name it in a document as `usda` and its number.",
  z.object({
    ndbNo: text("Its number in the table, five digits."),
    description: text("What the table calls it.", 400),
    aisle: text("Part of the shop."),
  }),
);

export const foodsEndpoint = endpoint(
  {
    ...tag,
    path: "/v1/foods",
    operationId: "listFoods",
    summary: "Foods as they are known today",
    description:
      "A page of them, by slug, or the best of a search first. An allergen that is not stated is unknown: that is never free from it.",
    parameters: [
      inQuery("search", "A name in any language, or the start of one; the best first."),
      inQuery("aisle", "The aisle of the shop."),
      inQuery("publisher", "Slug of a publisher whose own foods go first, as its newest published plan has them."),
      ...pageParameters,
    ],
    refusals: [],
    links: "The next and the previous page",
  },
  async (question) => {
    const { deps, query } = question;
    const filter = { search: one(query, "search"), aisle: one(query, "aisle"), publisher: one(query, "publisher") };
    return foodPage(
      deps,
      filter.search,
      await pageOf<Food>(question, (page) => listFoods(deps, anyone, { filter, page })),
    );
  },
  [
    asJson(
      pageSchema("FoodPage", "A page of foods.", list(foodSchema, "In the order of the list."), {
        openTable: list(
          openTableRow,
          "Rows of the open food table that have all words of the search and that no food of this page has: at most five. They are foods of nobody and state no allergen. Empty without a search.",
        ),
      }),
      "The page.",
      ({ items, next, previous, openTable }: FoodPage) => ({
        items: items.map(foodJson),
        openTable: openTable.map(({ row: { ndbNo, description, aisle } }) => ({ ndbNo, description, aisle })),
        next,
        previous,
      }),
    ),
  ],
);
