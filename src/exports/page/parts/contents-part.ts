import type { AllergenFinding, AllergenStatement } from "../../../domain/nutrition/allergens.js";
import type { DietStatement } from "../../../domain/nutrition/diets.js";
import { allergenGroups, byWhatFor, type AllergenGroups } from "../../sentences/allergen-groups.js";
import { andList } from "../../words/and-list.js";
import type { NameBook } from "../../words/name-book.js";
import { codeName } from "../../words/rule-words.js";
import { countryName } from "../country-name.js";
import { markup, type Content } from "../markup.js";
import { foodMarkup, foodsMarkup } from "../names-markup.js";
import { folded, part, type PlanView } from "../plan-view.js";
import { andListMarkup, saidWith } from "../said-with.js";
import { writersLanguage } from "../writers-language.js";

/** What is in the plan, which labels are to be read, what it fits; where it comes from, and each meal by itself, is folded away. */
export function contentsPart(view: PlanView): Content {
  const { answer, book } = view;
  const { plan, meals } = answer.contents;
  const words = book.words.page;
  return part("allergens", book.words.contents, [
    statementMarkup(plan.allergens, book),
    folded(words.whichLaw, [
      detailMarkup(plan.allergens, book),
      markup`<p class="quiet">${listsText(plan.allergens, book)}</p>`,
      answer.scaled.meals.map(({ meal }) => {
        const own = meals.get(meal.slug);
        return (
          own !== undefined && [
            markup`<h3${writersLanguage(meal.title, book)}>${meal.title}</h3>`,
            statementMarkup(own.allergens, book),
          ]
        );
      }),
    ]),
    dietsMarkup(plan.diets, book),
  ]);
}

function listsText({ lists, asked, reach }: AllergenStatement, book: NameBook): string {
  const words = book.words.page;
  const laws = lists.map(({ law, region }) => `${law} (${region})`).join("; ");
  if (reach === "REGION") return words.lists({ laws });
  return asked === null ? words.noCountryLists({ laws }) : words.noListOf({ country: countryName(asked, book), laws });
}

const row = (term: string, kind: string, body: Content): Content =>
  body !== null && markup`<div class="${kind}"><dt>${term}</dt>${body}</div>`;

/** Each allergen in one group alone, from the one that must be said first. */
function statementMarkup(statement: AllergenStatement, book: NameBook): Content {
  const words = book.words.page;
  const groups = allergenGroups(statement);
  const { alsoContains } = statement;
  const line = (found: readonly AllergenFinding[]): Content =>
    found.length === 0 ? null : markup`<dd>${names(found, book)}</dd>`;
  const strong = (found: readonly AllergenFinding[]): Content =>
    found.length === 0 ? null : markup`<dd><b>${names(found, book)}</b></dd>`;
  return markup`<dl class="presence">${[
    row(book.words.presence.CONTAINS, "contains", strong(groups.contains)),
    row(book.words.presence.MAY_CONTAIN, "may-contain", strong(groups.mayContain)),
    row(
      words.alsoContains,
      "contains",
      alsoContains.length === 0
        ? null
        : alsoContains.map(
            ({ code, foods }) =>
              markup`<dd>${codeName("allergens", code, book.words)} <span class="quiet">${inFoods(foods, book)}</span></dd>`,
          ),
    ),
    row(words.notStated, "open", labelsMarkup(groups, book)),
    row(words.tracesNotKnown, "no-ingredient", line(groups.noIngredient)),
    row(words.absent, "absent", line(groups.absent)),
  ]}</dl>`;
}

/** In which foods everything is, and what to look for on which label. */
function detailMarkup(statement: AllergenStatement, book: NameBook): Content {
  const words = book.words.page;
  const { contains, mayContain, labels } = allergenGroups(statement);
  return markup`<ul class="notes">${[
    ...contains.map(
      (each) =>
        markup`<li><b>${each.name}</b> ${inFoods(each.contains, book)}${each.threshold !== null && `; ${words.named({ threshold: each.threshold })}`}</li>`,
    ),
    ...mayContain.map((each) => markup`<li><b>${each.name}</b> ${onLabelOf(each.mayContain, book)}</li>`),
    ...byWhatFor(labels).map(
      ({ foods, names: of }) => markup`<li><b>${onLabelOf(foods, book)}</b>: ${of.join(", ")}</li>`,
    ),
  ]}</ul>`;
}

function labelsMarkup({ open, labels, glutenFreeOnly }: AllergenGroups, book: NameBook): Content {
  const words = book.words.page;
  if (open.length === 0 && labels.length === 0) return null;
  if (labels.length === 0) return markup`<dd>${names(open, book)}</dd>`;
  return [
    markup`<dd>${readLabels(
      labels.map(({ food }) => food),
      book,
    )}</dd>`,
    glutenFreeOnly.length > 0 &&
      markup`<dd class="quiet">${saidWith((foods) => words.glutenFreeOnly({ foods }), foodsMarkup(glutenFreeOnly, book))}</dd>`,
  ];
}

const inFoods = (slugs: readonly string[], book: NameBook): Content =>
  saidWith((foods) => book.words.page.inFoods({ foods }), foodsMarkup(slugs, book));

const onLabelOf = (slugs: readonly string[], book: NameBook): Content =>
  saidWith((foods) => book.words.page.onLabelOf({ foods }), foodsMarkup(slugs, book));

function readLabels(slugs: readonly string[], book: NameBook): Content {
  const names = andListMarkup(
    slugs.map((slug) => foodMarkup(slug, book)),
    book.words,
  );
  return saidWith((foods) => book.words.page.readLabels({ count: slugs.length, foods }), names);
}

const names = (found: readonly AllergenFinding[], book: NameBook): string =>
  andList(
    found.map(({ name }) => name),
    book.words,
  );

/** Diets of the whole plan: which it fits and which not; why is folded away. */
function dietsMarkup(diets: readonly DietStatement[], book: NameBook): Content {
  const words = book.words.page;
  const name = ({ diet }: DietStatement): string => codeName("diets", diet, book.words);
  const fitting = diets.filter(({ fits }) => fits === true);
  const broken = diets.filter(({ fits }) => fits === false);
  const open = diets.filter(({ fits }) => fits === null);
  const all = (of: readonly DietStatement[]): Content =>
    of.length === 0 ? null : markup`<dd><b>${andList(of.map(name), book.words)}</b></dd>`;
  return [
    markup`<dl class="presence diets">${[
      row(words.fits, "fits", all(fitting)),
      row(book.words.breaks, "breaks", all(broken)),
      row(words.notConfirmedDiets, "open", all(open)),
    ]}</dl>`,
    folded(words.whyDiets, [
      markup`<ul class="notes">${[
        ...fitting.flatMap((diet) =>
          diet.claims.map(
            ({ law, threshold }) => markup`<li><b>${name(diet)}</b>: ${words.claim({ threshold, law })}</li>`,
          ),
        ),
        ...broken.map(
          (diet) =>
            markup`<li><b>${name(diet)}</b> ${saidWith((foods) => words.because({ foods }), foodsMarkup(diet.breaks, book))}</li>`,
        ),
        ...byFoods(open).map(
          ({ alike, foods }) =>
            markup`<li><b>${andList(alike.map(name), book.words)}</b>: ${foods.length === 0 ? words.nobodySays : readLabels(foods, book)}</li>`,
        ),
      ]}</ul>`,
      markup`<p class="quiet">${words.dietNote}</p>`,
    ]),
  ];
}

/** Diets that the same foods leave open, together. */
function byFoods(
  open: readonly DietStatement[],
): readonly { readonly alike: readonly DietStatement[]; readonly foods: readonly string[] }[] {
  return [...new Set(open.map(({ unknown }) => unknown.join()))].map((key) => {
    const alike = open.filter(({ unknown }) => unknown.join() === key);
    return { alike, foods: alike[0]?.unknown ?? [] };
  });
}
