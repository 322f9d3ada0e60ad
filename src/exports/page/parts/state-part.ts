import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { hiddenFields, isPrivate } from "../ask.js";
import { countryName } from "../country-name.js";
import { dateOfDay, dayText, wallClock } from "../dates.js";
import { householdForm, type FormInput } from "../form/household-form.js";
import { attributes, between, markup, type Content } from "../markup.js";
import type { NameBook } from "../../words/name-book.js";
import { wishTexts } from "../../words/wish-texts.js";
import { foodMarkup } from "../names-markup.js";
import { saidWith } from "../said-with.js";
import { inWritersLanguage } from "../writers-language.js";
import { swappedFoods } from "./swapped-foods.js";
import { routeMarkup } from "./ways-part.js";

/** For whom it is computed, in one line that unfolds to the form, with buttons for one more and one fewer. */
export function statePart(input: FormInput, answer: PlanAnswer | null): Content {
  const { faults, book, form } = input;
  const words = book.words.page;
  const changed = answer === null ? [] : changesOf(answer, book);
  return [
    faults.size > 0 && markup`<p class="fault" role="alert">${words.faults({ count: faults.size })}</p>`,
    markup`<div class="asked">${answer !== null && form.eaters.length === 0 && stepper(input, answer.scaled.servings)}
<details class="ask"${attributes({ open: faults.size > 0 })}><summary><span class="state">${answer === null ? words.moreAboutYou : stateText(answer, book)}</span> <span class="change">${words.change}</span></summary>
${householdForm(input)}</details></div>`,
    changed.length > 0 &&
      markup`<p class="quiet changed" role="status">${saidWith((what) => words.changed({ what }), between(changed, "; "))}</p>`,
  ];
}

/** `5 people · gluten-free · UK · starts Sun, 1 Mar, 14:00` */
function stateText({ scaled, household }: PlanAnswer, book: NameBook): string {
  const words = book.words.page;
  const [region] = household.regions ?? [];
  const { session } = household;
  const date = dateOfDay(0, session);
  const time = wallClock(0, session, book);
  return [
    words.people({ count: scaled.servings }),
    ...wishTexts(household, book.words),
    region === undefined
      ? words.strictestRules
      : region.owner === "READER"
        ? countryName(region.region, book)
        : words.countryRules({ country: countryName(region.region, book) }),
    ...(date === null || time === null ? [] : [words.starts({ when: `${dayText(date, book)}, ${time}` })]),
    ...(household.onHand.length === 0 ? [] : [words.atHome({ count: household.onHand.length })]),
  ].join(" · ");
}

/** What is otherwise than the author wrote it. */
function changesOf({ scaled, household }: PlanAnswer, book: NameBook): readonly Content[] {
  const words = book.words.page;
  const { plan } = scaled.bundle;
  const swapped = swappedFoods([...scaled.meals, ...scaled.components].flatMap(({ lines }) => lines));
  const foods = new Map(swapped.map((each) => [`${each.food} ${each.other}`, each]));
  return [
    ...(scaled.servings === plan.serves ? [] : [words.insteadOf({ count: scaled.servings, written: plan.serves })]),
    ...[...foods.values()].map(({ food, other }) =>
      saidWith(
        (own, from) => words.inPlaceOf({ food: own, other: from }),
        foodMarkup(food, book),
        foodMarkup(other, book),
      ),
    ),
    ...scaled.components.flatMap(({ component, route }) =>
      route === null ? [] : [[inWritersLanguage(component.title, book), ": ", routeMarkup(route, book)]],
    ),
    ...(household.kitchen === null ? [] : [words.ownKitchen]),
  ];
}

/** One fewer, how many, one more: two buttons of a form, so that it needs no script. */
function stepper({ action, form, book }: FormInput, servings: number): Content {
  const words = book.words.page;
  const button = (to: number, sign: string, label: string): Content =>
    markup`<button type="submit"${attributes({ name: "servings", value: to, "aria-label": label, disabled: to < 1 })}>${sign}</button>`;
  return markup`<form class="stepper" action="${action}" method="${isPrivate(form) ? "post" : "get"}">${hiddenFields(form, ["servings"])}${button(servings - 1, "−", words.stepDown({ to: Math.max(1, servings - 1) }))}<output aria-label="${words.howManyNow}">${servings}</output>${button(servings + 1, "+", words.stepUp({ to: servings + 1 }))}</form>`;
}
