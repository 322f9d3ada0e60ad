import type { DietStatement } from "../../../domain/nutrition/diets.js";
import { allergenGroups } from "../../sentences/allergen-groups.js";
import { andList } from "../../words/and-list.js";
import { capital } from "../../words/capital.js";
import { minutesText } from "../../words/minutes-text.js";
import { moneyText } from "../../words/money-text.js";
import { codeName } from "../../words/rule-words.js";
import { markup, type Content } from "../markup.js";
import { foodsMarkup } from "../names-markup.js";
import type { PlanView } from "../plan-view.js";
import { andListMarkup, saidWith } from "../said-with.js";
import { inWritersLanguage } from "../writers-language.js";
import { lateFor, frozenFor } from "./late-meal.js";

/** What one decides by: what is in it, whether it suits, what has to be done beforehand. Each line leads to where it is told in full. */
export function verdictPart(view: PlanView): Content {
  const lines = [
    ...kitchenLines(view),
    ...allergenLines(view),
    ...dietLines(view),
    ...lateLines(view),
    ...workLines(view),
  ];
  return markup`<section class="verdict" aria-labelledby="verdict-title"><h2 id="verdict-title" class="unseen">${view.book.words.page.verdict}</h2>
<ul>${lines.map((line) => markup`<li>${line}</li>`)}</ul></section>`;
}

const leads = (id: string, text: Content): Content => markup`<a href="#${id}">${text}</a>`;

function kitchenLines({ answer, book }: PlanView): readonly Content[] {
  const words = book.words.page;
  const { session, list, nutrition } = answer;
  const { perServing } = list.cost;
  return [
    leads("session", session === null ? words.noOneGo : words.kitchenTime({ time: minutesText(session.totalMinutes) })),
    ...(perServing === null
      ? []
      : [
          leads(
            "cost",
            words.perPersonCost({ price: moneyText(perServing, book.reader), count: nutrition.plan.mealCount }),
          ),
        ]),
  ];
}

function allergenLines({ answer, book }: PlanView): readonly Content[] {
  const words = book.words.page;
  const groups = allergenGroups(answer.contents.plan.allergens);
  const told = (term: string, names: readonly string[]): readonly Content[] =>
    names.length === 0 ? [] : [leads("allergens", [markup`<b>${term}:</b> `, andList(names, book.words)])];
  const asked = answer.household.diets.length > 0;
  return [
    ...told(
      book.words.presence.CONTAINS,
      groups.contains.map(({ name }) => name),
    ),
    ...told(
      book.words.presence.MAY_CONTAIN,
      groups.mayContain.map(({ name }) => name),
    ),
    ...(groups.labels.length > 0 && !asked
      ? [leads("allergens", words.labelsToRead({ count: groups.labels.length }))]
      : []),
  ];
}

function dietLines({ answer, book }: PlanView): readonly Content[] {
  const words = book.words.page;
  const text = ({ diet, fits, breaks, unknown }: DietStatement): Content => {
    const name = codeName("diets", diet, book.words);
    if (fits === true) return capital(words.fitsDiet({ diet: name }));
    return fits === false
      ? saidWith((foods) => words.breaksDiet({ diet: name, foods }), foodsMarkup(breaks, book))
      : words.notConfirmed({ diet: name, count: unknown.length });
  };
  return answer.contents.plan.diets
    .filter(({ diet }) => answer.household.diets.includes(diet))
    .map((diet) => leads("allergens", markup`<b>${text(diet)}</b>`));
}

function lateLines(view: PlanView): readonly Content[] {
  const words = view.book.words.page;
  const late = view.answer.scaled.meals.filter(({ meal }) => lateFor(view, meal.slug).length > 0);
  const frozen = late.filter(({ meal }) => frozenFor(view, meal.slug).length > 0);
  const [first] = late;
  if (first === undefined) return [];
  const to = `meal-${(frozen[0] ?? first).meal.slug}`;
  return [
    ...(frozen.length > 0 ? [leads(to, words.needFreezing({ count: frozen.length }))] : []),
    ...(late.length > frozen.length ? [leads(to, words.comeTooLate({ count: late.length - frozen.length }))] : []),
  ];
}

/** What begins the evening before, and whether it takes several days. */
function workLines({ answer, book }: PlanView): readonly Content[] {
  const words = book.words.page;
  const tasks = answer.sessions.flatMap(({ session }) => session.tasks).filter(({ eveningBefore }) => eveningBefore);
  const titles = [...new Set(tasks.map(({ of }) => of.title))].map((title) => inWritersLanguage(title, book));
  return [
    ...(titles.length > 0
      ? [
          leads(
            "session",
            saidWith((things) => words.eveningBefore({ things }), andListMarkup(titles, book.words)),
          ),
        ]
      : []),
    ...(answer.sessions.length > 1 ? [leads("session", words.overDays({ count: answer.sessions.length }))] : []),
  ];
}
