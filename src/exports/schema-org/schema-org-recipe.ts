import type { CreativeWork, HowToSection, HowToStep, Organization, Recipe, RestrictedDiet } from "schema-dts";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import type { ScaledMeal } from "../../domain/plan/scaled.js";
import type { Addresses } from "../addresses.js";
import { isoDuration } from "./iso-duration.js";
import type { Credit } from "../../domain/model/writers-words.js";
import { writtenText } from "../document/written-text.js";
import { oneLine } from "../words/legible-text.js";
import { lineText } from "../words/line-text.js";
import type { NameBook } from "../words/name-book.js";
import { cookingTimes, recipeParts, type RecipePart } from "./recipe-parts.js";
import { licenceOf, schemaOrgImage } from "./schema-org-image.js";
import { schemaOrgNutrition } from "./schema-org-nutrition.js";

/**
 * Diets that mean the same here and at schema.org. GlutenFreeDiet is not among them: what is stated here is that no ingredient
 * contains gluten, which is less than laws ask of the words "gluten-free".
 */
const diets: Readonly<Record<string, RestrictedDiet>> = {
  vegan: "https://schema.org/VeganDiet",
  vegetarian: "https://schema.org/VegetarianDiet",
};

/** Where a meal stands on the page of its plan; also the id of its data. */
export const mealAddress = (slug: string, { revision }: Pick<Addresses, "revision">): string =>
  `${revision}#meal-${encodeURIComponent(slug)}`;

/** Whose plan it is. */
const publisherOf = (
  { publication }: Pick<PlanAnswer, "publication">,
  addresses: Addresses,
): Exclude<Organization, string> => ({
  "@type": "Organization",
  "@id": addresses.publisher,
  name: oneLine(publication.publisher.name),
  url: addresses.publisher,
});

/**
 * A meal as a Recipe that stands alone: the lines of its components in the share it takes, component work first. Its picture is its own,
 * else one of what goes into it, else that of its plan; where there is none search engines miss it.
 */
export function schemaOrgRecipe(
  scaledMeal: ScaledMeal,
  answer: PlanAnswer,
  addresses: Addresses,
  book: NameBook,
): Exclude<Recipe, string> {
  const { meal } = scaledMeal;
  const { scaled, publication, contents, nutrition, household } = answer;
  const { plan } = scaled.bundle;
  const parts = recipeParts(scaledMeal, scaled);
  const times = cookingTimes(parts);
  const publisher = publisherOf(answer, addresses);
  const found = nutrition.meals.find((each) => each.meal === meal.slug)?.nutrition;
  const figures = found === undefined ? null : schemaOrgNutrition(found, household.region, book);
  const fits = (contents.meals.get(meal.slug)?.diets ?? []).flatMap(({ diet, fits: known }) =>
    known === true ? (diets[diet] ?? []) : [],
  );
  const leanedOn = [plan, ...parts.flatMap(({ component }) => component?.component ?? [])];
  const tools = [...new Set(leanedOn.flatMap(({ equipment = [] }) => equipment))];
  const credits = leanedOn.flatMap((each) => each.credits ?? []);
  const adapted = credits.filter((credit) => credit.adapted === true);
  const quoted = credits.filter((credit) => credit.adapted !== true);
  const titles = parts.flatMap(({ component }) => (component === null ? [] : [component.component.title]));
  const images = [meal.image, ...parts.map(({ component }) => component?.component.image), plan.image];
  const image = schemaOrgImage(images, publication.publisher.slug, addresses);
  return {
    "@type": "Recipe",
    "@id": mealAddress(meal.slug, addresses),
    url: mealAddress(meal.slug, addresses),
    name: oneLine(meal.title),
    description: oneLine(
      [
        book.words.mealOf({ plan: plan.title }),
        plan.summary ?? "",
        spoken(meal.introduction ?? plan.introduction),
      ].join(" "),
    ),
    author: publisher,
    publisher,
    datePublished: publication.firstPublishedAt.toISOString(),
    dateModified: publication.publishedAt.toISOString(),
    inLanguage: plan.locale,
    version: String(publication.revision),
    prepTime: isoDuration(times.prep),
    cookTime: isoDuration(times.cook),
    totalTime: isoDuration(times.total),
    recipeYield: [String(scaled.servings), book.words.servings({ count: scaled.servings })],
    recipeIngredient: parts.flatMap((part) => ingredients(part, book)),
    recipeInstructions: parts.flatMap((part) => instructions(part, meal.title)),
    keywords: [book.words.makeAheadKeyword, ...(plan.tags ?? []), ...titles].map(oneLine).join(", "),
    ...(tools.length === 0 ? {} : { tool: tools.map(oneLine) }),
    ...(adapted.length === 0 ? {} : { isBasedOn: adapted.map(work) }),
    ...(quoted.length === 0 ? {} : { citation: quoted.map(work) }),
    ...(image === null ? {} : { image }),
    ...(plan.licence === undefined ? {} : licenceOf(plan.licence)),
    ...(figures === null ? {} : { nutrition: figures }),
    ...(fits.length === 0 ? {} : { suitableForDiet: fits }),
  };
}

const spoken = (source: string | undefined): string => (source === undefined ? "" : writtenText(source));

const work = ({ name, url, licence }: Credit): Exclude<CreativeWork, string> => ({
  "@type": "CreativeWork",
  name: oneLine(name),
  ...(url === undefined ? {} : { url }),
  ...(licence === undefined ? {} : { license: { "@type": "CreativeWork", name: oneLine(licence) } }),
});

const ingredients = ({ component, lines }: RecipePart, book: NameBook): readonly string[] =>
  lines.map((line) => {
    const said = lineText(line, book);
    return oneLine(component === null ? said : `${said} (${book.words.forThe({ what: component.component.title })})`);
  });

function instructions({ component, steps }: RecipePart, meal: string): readonly Exclude<HowToSection, string>[] {
  if (steps.length === 0) return [];
  const section: Exclude<HowToSection, string> = {
    "@type": "HowToSection",
    name: oneLine(component?.component.title ?? meal),
    itemListElement: steps.map(({ text }): Exclude<HowToStep, string> => ({
      "@type": "HowToStep",
      text: oneLine(text),
    })),
  };
  return [section];
}
