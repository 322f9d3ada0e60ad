import type { AllergenFinding, AllergenStatement } from "../../../domain/nutrition/allergens.js";
import type { DietStatement } from "../../../domain/nutrition/diets.js";
import { allergenGroups, byWhatFor, type AllergenGroups } from "../../sentences/allergen-groups.js";
import { markup, type Content } from "../markup.js";
import { folded, part, type PlanView } from "../plan-view.js";
import type { NameBook } from "../../words/name-book.js";

/** Terms of the groups of allergens, from the one that must be said first. */
export const groupTerms = [
  ["contains", "Contains"],
  ["mayContain", "May contain"],
  ["open", "Look at the label"],
  ["noIngredient", "Not an ingredient, traces not known"],
  ["absent", "Does not contain"],
] as const satisfies readonly (readonly [keyof AllergenGroups, string])[];

/** Allergens of the whole plan and of each meal, in the four values. */
export function allergensPart({ answer, book }: PlanView): Content {
  const { plan, meals } = answer.contents;
  return part("allergens", "Allergens", [
    markup`<p class="aside">${basisText(plan.allergens)}</p>`,
    statementMarkup(plan.allergens, book),
    folded(
      "Meal by meal",
      answer.scaled.meals.map(({ meal }) => {
        const own = meals.get(meal.slug);
        return own !== undefined && [markup`<h3>${meal.title}</h3>`, statementMarkup(own.allergens, book)];
      }),
    ),
  ]);
}

function basisText({ lists, asked, reach }: AllergenStatement): string {
  const laws = lists.map(({ law, region }) => `${law} (${region})`).join("; ");
  if (reach === "REGION") return `By the list in force: ${laws}.`;
  const why = asked === null ? "No place was given" : `No list of ${asked} is known here`;
  return `${why}, so everything on any list in force is named: ${laws}.`;
}

function statementMarkup(statement: AllergenStatement, book: NameBook): Content {
  const groups = allergenGroups(statement);
  const { alsoContains } = statement;
  const shown = groupTerms.map(
    ([group, term]) =>
      groups[group].length > 0 &&
      markup`<div class="${group.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}"><dt>${term}</dt>${groupMarkup(group, groups, book)}</div>`,
  );
  return markup`<dl class="presence">${shown}${
    alsoContains.length > 0 &&
    markup`<div class="contains"><dt>Contains, on none of these lists</dt>${alsoContains.map(
      ({ code, foods }) => markup`<dd>${code} <span class="quiet">in ${book.foods(foods)}</span></dd>`,
    )}</div>`
  }</dl>`;
}

/** What is there is said one by one, with the foods it comes in; what is open by the foods that leave it so; what is absent in a row. */
function groupMarkup(group: (typeof groupTerms)[number][0], groups: AllergenGroups, book: NameBook): Content {
  const found = groups[group];
  switch (group) {
    case "contains":
      return found.map(({ name, contains, threshold }) => {
        const limit = threshold === null ? "" : `; to be named from ${threshold}`;
        return markup`<dd><b>${name}</b> <span class="quiet">in ${book.foods(contains)}${limit}</span></dd>`;
      });
    case "mayContain":
      return found.map(
        ({ name, mayContain }) =>
          markup`<dd><b>${name}</b> <span class="quiet">on the label of ${book.foods(mayContain)}</span></dd>`,
      );
    case "open":
      return labelsMarkup(groups, book);
    case "noIngredient":
    case "absent":
      return markup`<dd>${names(found)}</dd>`;
  }
}

function labelsMarkup({ open, labels, glutenFreeOnly }: AllergenGroups, book: NameBook): Content {
  if (labels.length === 0) return markup`<dd>${names(open)}</dd>`;
  return [
    markup`<dd>of ${book.foods(labels.map(({ food }) => food))}</dd>`,
    markup`<dd>${folded(
      "What for",
      markup`<ul>${byWhatFor(labels).map(({ foods, names: of }) => markup`<li><b>${book.foods(foods)}</b>: ${of.join(", ")}</li>`)}</ul>`,
    )}</dd>`,
    glutenFreeOnly.length > 0 &&
      markup`<dd class="quiet">Gluten-free, as ${book.foods(glutenFreeOnly)} is called, says nothing of wheat, rye, barley or oats as such.</dd>`,
  ];
}

const names = (found: readonly AllergenFinding[]): string => found.map(({ name }) => name).join(", ");

/** Diets of the whole plan: what is stated, and which foods stand in the way. */
export function dietsPart({ answer, book }: PlanView): Content {
  const { diets } = answer.contents.plan;
  const open = diets.filter(({ fits }) => fits === null);
  const group = (term: string, of: readonly DietStatement[], body: Content): Content =>
    of.length > 0 && markup`<div><dt>${term}</dt>${body}</div>`;
  const one = (diet: DietStatement): Content => markup`<dd>${dietMarkup(diet, book)}</dd>`;
  const fitting = diets.filter(({ fits }) => fits === true);
  const broken = diets.filter(({ fits }) => fits === false);
  return part(
    "diets",
    "Diets",
    markup`<dl class="presence">${[
      group("Fits", fitting, fitting.map(one)),
      group(
        "Not known",
        open,
        bySameFoods(open).map(
          ([alike, unknown]) =>
            markup`<dd><b>${alike}</b> <span class="quiet">${unknown.length > 0 ? `look at the label of ${book.foods(unknown)}` : "nobody says"}</span></dd>`,
        ),
      ),
      group("Does not fit", broken, broken.map(one)),
    ]}</dl>`,
    "As the plan is worked out here, swaps included. It says what the ingredients are, not what traces there may be, and claims nothing.",
  );
}

/** Diets that the same foods leave open, said together. */
function bySameFoods(open: readonly DietStatement[]): readonly (readonly [string, readonly string[]])[] {
  const keys = [...new Set(open.map(({ unknown }) => unknown.join()))];
  return keys.map((key) => {
    const alike = open.filter(({ unknown }) => unknown.join() === key);
    return [alike.map(({ diet }) => diet).join(", "), alike[0]?.unknown ?? []];
  });
}

function dietMarkup({ diet, name, fits, breaks, claims }: DietStatement, book: NameBook): Content {
  const why = [
    fits === false ? `because of ${book.foods(breaks)}` : name,
    ...(fits === true ? claims.map(({ law, threshold }) => `as a claim it is tied to ${threshold} by ${law}`) : []),
  ].filter((each) => each !== null);
  return [markup`<b>${diet}</b>`, markup` <span class="quiet">${why.join("; ")}</span>`];
}
