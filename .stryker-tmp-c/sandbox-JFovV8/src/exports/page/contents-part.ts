// @ts-nocheck
import type { AllergenPresence } from "../../domain/model/food.js";
import type { AllergenFinding, AllergenStatement } from "../../domain/nutrition/allergens.js";
import type { DietStatement } from "../../domain/nutrition/diets.js";
import { markup, type Content } from "./markup.js";
import { folded, part, type PlanView } from "./plan-view.js";
import type { PlanWords } from "./plan-words.js";

/** From the one that must be said first; every value is said in words. */
export const presenceWords = [
  ["CONTAINS", "Contains"],
  ["MAY_CONTAIN", "May contain"],
  ["UNKNOWN", "Not known"],
  ["DOES_NOT_CONTAIN", "Does not contain"],
] as const satisfies readonly (readonly [AllergenPresence, string])[];

/** Allergens of the whole plan and of each meal, in the four values. */
export function allergensPart({ answer, words }: PlanView): Content {
  const { plan, meals } = answer.contents;
  return part("allergens", "Allergens", [
    markup`<p class="aside">${basisText(plan.allergens)}</p>`,
    statementMarkup(plan.allergens, words),
    folded(
      "Meal by meal",
      answer.scaled.meals.map(({ meal }) => {
        const own = meals.get(meal.slug);
        return own !== undefined && [markup`<h3>${meal.title}</h3>`, statementMarkup(own.allergens, words)];
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

function statementMarkup({ findings, alsoContains }: AllergenStatement, words: PlanWords): Content {
  const of = (presence: AllergenPresence): readonly AllergenFinding[] =>
    findings.filter((each) => each.presence === presence);
  const groups = presenceWords.map(
    ([presence, term]) =>
      of(presence).length > 0 &&
      markup`<div class="${presence.toLowerCase().replaceAll("_", "-")}"><dt>${term}</dt>${groupMarkup(presence, of(presence), words)}</div>`,
  );
  return markup`<dl class="presence">${groups}${
    alsoContains.length > 0 &&
    markup`<div class="contains"><dt>Contains, on none of these lists</dt>${alsoContains.map(
      ({ code, foods }) => markup`<dd>${code} <span class="quiet">in ${words.foodNames(foods)}</span></dd>`,
    )}</div>`
  }</dl>`;
}

/** What is there is said one by one, with the foods it comes in; what is open or absent in a row. */
function groupMarkup(presence: AllergenPresence, found: readonly AllergenFinding[], words: PlanWords): Content {
  switch (presence) {
    case "CONTAINS":
      return found.map(({ name, contains, threshold }) => {
        const limit = threshold === null ? "" : `; to be named from ${threshold}`;
        return markup`<dd><b>${name}</b> <span class="quiet">in ${words.foodNames(contains)}${limit}</span></dd>`;
      });
    case "MAY_CONTAIN":
      return found.map(
        ({ name, mayContain }) =>
          markup`<dd><b>${name}</b> <span class="quiet">on the label of ${words.foodNames(mayContain)}</span></dd>`,
      );
    case "UNKNOWN":
      return [
        markup`<dd>${names(found)}</dd>`,
        markup`<dd>${folded(
          "Which foods leave it open",
          markup`<ul>${bySameFoods(found).map(([allergens, unknown]) => markup`<li><b>${allergens}</b>: ${unknown.length > 0 ? words.foodNames(unknown) : "nobody says"}</li>`)}</ul>`,
        )}</dd>`,
      ];
    case "DOES_NOT_CONTAIN":
      return markup`<dd>${names(found)}</dd>`;
  }
}

/** Allergens that the same foods leave open, said together. */
function bySameFoods(found: readonly AllergenFinding[]): readonly (readonly [string, readonly string[]])[] {
  const keys = [...new Set(found.map(({ unknown }) => unknown.join()))];
  return keys.map((key) => {
    const alike = found.filter(({ unknown }) => unknown.join() === key);
    return [names(alike), alike[0]?.unknown ?? []];
  });
}

const names = (found: readonly AllergenFinding[]): string => found.map(({ name }) => name).join(", ");

/** Diets of the whole plan: what is stated, and which foods stand in the way. */
export function dietsPart({ answer, words }: PlanView): Content {
  const { diets } = answer.contents.plan;
  const open = diets.filter(({ fits }) => fits === null);
  const group = (term: string, of: readonly DietStatement[], body: Content): Content =>
    of.length > 0 && markup`<div><dt>${term}</dt>${body}</div>`;
  const one = (diet: DietStatement): Content => markup`<dd>${dietMarkup(diet, words)}</dd>`;
  const fitting = diets.filter(({ fits }) => fits === true);
  const broken = diets.filter(({ fits }) => fits === false);
  return part(
    "diets",
    "Diets",
    markup`<dl class="presence">${[
      group("Fits", fitting, fitting.map(one)),
      group("Not known", open, [
        markup`<dd>${open.map(({ diet }) => diet).join(", ")}</dd>`,
        markup`<dd>${folded("Which foods leave it open", markup`<ul>${open.map((diet) => markup`<li>${dietMarkup(diet, words)}</li>`)}</ul>`)}</dd>`,
      ]),
      group("Does not fit", broken, broken.map(one)),
    ]}</dl>`,
    "As the plan is worked out here, swaps included. It says what the ingredients are, and claims nothing.",
  );
}

function dietMarkup({ diet, name, fits, breaks, unknown, claims }: DietStatement, words: PlanWords): Content {
  const why = [
    fits === false ? `because of ${words.foodNames(breaks)}` : name,
    fits === null ? `nobody says so of ${words.foodNames(unknown)}` : null,
    ...(fits === true ? claims.map(({ law, threshold }) => `as a claim it is tied to ${threshold} by ${law}`) : []),
  ].filter((each) => each !== null);
  return [markup`<b>${diet}</b>`, markup` <span class="quiet">${why.join("; ")}</span>`];
}
