import type { InSlices } from "../../../domain/counted-work.js";
import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { sessionProblemText } from "../../sentences/session-problem-text.js";
import { andList } from "../../words/and-list.js";
import { timesText } from "../../words/component-text.js";
import { minutesText } from "../../words/minutes-text.js";
import { nameBook } from "../../words/name-book.js";
import { isPrivate, wayTo } from "../ask.js";
import type { PlanForm } from "../form/plan-form.js";
import { attributes, between, markup, type Content } from "../markup.js";
import { subjectMarkup } from "../names-markup.js";
import { pageFrame } from "../page-frame.js";
import { planPath, publisherPath, type PageLinks } from "../page-links.js";
import { codeName } from "../../words/rule-words.js";
import { minuteText, taskFacts, taskWords } from "../parts/session-part.js";
import { linesMarkup, stepsMarkup } from "../parts/steps-with-lines.js";
import { titleMarkup } from "../parts/swapped-foods.js";
import { keptThings, placesMarkup } from "../parts/storage-part.js";
import type { PlanView } from "../plan-view.js";
import { resolvedMealSteps, resolvedSteps } from "../../../domain/plan/session/resolved-steps.js";
import { cookingDays, cookSteps, type CookStep } from "./cook-steps.js";
import { saidWith } from "../said-with.js";
import { inWritersLanguage, writersLanguage } from "../writers-language.js";

export interface KitchenPageInput {
  readonly answer: PlanAnswer;
  readonly form: PlanForm;
  readonly links: PageLinks;
}

/** The work step by step, to cook from, a turn for each. A script shows one step at a time; without it, it is a list. */
export function* cookPageInSlices({ answer, form, links }: KitchenPageInput): InSlices<string> {
  const { publication, scaled, reader } = answer;
  const { plan } = scaled.bundle;
  const book = nameBook(scaled.bundle, reader);
  const words = book.words.page;
  const view = { answer, book };
  const named = { publisher: publication.publisher.slug, slug: publication.slug };
  const steps = cookSteps(view);
  const dishes = steps.length === 0 ? dishesMarkup(view) : [];
  const written: Content[] = [];
  for (const [at, step] of steps.entries()) {
    yield;
    written.push(stepMarkup(step, at, steps.length, view));
  }
  const back = wayTo({ path: planPath(named, links), form, text: words.backToPlan });
  return pageFrame({
    title: `${words.cookTitle({ plan: plan.title })} · ${publication.publisher.name}`,
    words: book.words,
    links,
    canonical: null,
    trail: [{ path: publisherPath(named.publisher), text: publication.publisher.name }],
    kind: "cook",
    script: "cook",
    main: markup`<header class="front"><h1${writersLanguage(plan.title, book)}>${plan.title}</h1>
<div class="onward">${back}</div></header>
<ol class="cooking" id="cooking"${attributes({
      "data-place": `${named.publisher}/${named.slug} ${publication.revision} ${scaled.servings} ${steps.length}`,
      "data-private": isPrivate(form),
      "data-all": words.allSteps,
      "data-one": words.oneStep,
      "data-stop": words.stopTimer,
      "data-up": words.timerDone,
    })}>
${beforeMarkup(view, steps, dishes.length)}
${written}${dishes}
${putAwayMarkup(view, written.length + dishes.length, back)}
</ol>
<div class="timers" id="timers"></div>`,
  });
}

const turn = (back: string | null, on: string | null, words: { readonly back: string; readonly on: string }): Content =>
  markup`<p class="turn">${back !== null && markup`<a class="go back" href="#${back}">${words.back}</a>`}${on !== null && markup`<a class="go on" href="#${on}">${words.on}</a>`}</p>`;

/** The anchor of a step, and of what comes before and after all of them. */
const anchor = (at: number, all: number): string => (at < 0 ? "start" : at < all ? `step-${at + 1}` : "away");

/** What to have ready, what holds for all of it, and cautions about what no step below is about. */
function beforeMarkup(view: PlanView, steps: readonly CookStep[], dishes: number): Content {
  const { answer, book } = view;
  const words = book.words.page;
  const days = cookingDays(view);
  const [first] = days;
  const appliances = [
    ...new Set(days.flatMap(({ session }) => session.tasks.flatMap(({ appliance }) => appliance ?? []))),
  ];
  const always = answer.cautions.cautions.filter(
    ({ about }) =>
      !about.some(({ kind, slug }) => steps.some(({ task: { of } }) => of.kind === kind && of.slug === slug)),
  );
  const evening = days.flatMap(({ session }) => session.tasks).filter(({ eveningBefore }) => eveningBefore);
  return markup`<li class="step" id="start"><h2>${words.beforeYouStart}</h2>
${first !== undefined && days.length === 1 && markup`<p>${words.wholeTime({ time: minutesText(first.session.totalMinutes), busy: minutesText(first.session.handsOnMinutes) })}</p>`}
${days.length > 1 && markup`<p>${book.words.overDays({ sessions: days.length })}</p>`}
${evening.map(({ of, text }) => markup`<p class="flag"><b>${book.words.eveningBefore}</b>: ${inWritersLanguage(of.title, book)}. ${inWritersLanguage(text, book)}</p>`)}
<p>${words.readyLines}</p>
${
  appliances.length > 0 &&
  markup`<p>${words.youNeed({
    appliances: andList(
      appliances.map((code) => codeName("appliances", code, book.words)),
      book.words,
    ),
  })}</p>`
}
${always.map(({ text }) => markup`<p class="caution">${text}</p>`)}
${steps.length === 0 && markup`<p class="flag">${book.words.noOrder}</p><ul>${answer.sessionProblems.map((problem) => markup`<li>${sessionProblemText(problem, answer.scaled, book.words)}</li>`)}</ul>`}
${turn(null, steps.length + dishes === 0 ? "away" : "step-1", { back: words.back, on: words.start })}</li>`;
}

function stepMarkup(step: CookStep, at: number, all: number, view: PlanView): Content {
  const { answer, book } = view;
  const words = book.words.page;
  const { task, day, lines, minutesLeft, alongside, share } = step;
  const days = cookingDays(view).length;
  const progress = [
    ...(days > 1 ? [words.cookingDayOf({ day })] : []),
    words.stepOf({ step: at + 1, all }),
    ...(task.eveningBefore ? [book.words.eveningBefore] : [minuteText(task.startMinute, answer, book)]),
    ...(minutesLeft === null || task.eveningBefore ? [] : [words.timeLeft({ time: minutesText(minutesLeft) })]),
  ];
  const minutes = task.endMinute - task.startMinute;
  const parts = task.load !== null && lines.length > 0 && task.load.of > 1;
  return markup`<li class="step" id="step-${at + 1}">
<p class="progress">${progress.join(" · ")}</p>
<h2${writersLanguage(task.of.title, book)}>${task.of.title}</h2>
<p class="do">${taskWords(task, view)}</p>
${linesMarkup(lines, book)}
${parts && markup`<p class="quiet">${words.forAllParts}</p>`}
${share !== null && markup`<p class="quiet">${words.shareOfRecipe({ times: timesText(share.batches, book.reader), all: timesText(share.all, book.reader) })}</p>`}
<p class="facts">${taskFacts(task, view).join(" · ")}</p>
${cautionsOf(step, view).map((text) => markup`<p class="caution">${text}</p>`)}
${
  alongside.length > 0 &&
  markup`<p class="meanwhile">${saidWith(
    (things) => words.meanwhile({ things }),
    between(
      alongside.map(({ of, endMinute }) => {
        const when = minuteText(endMinute, answer, book);
        return saidWith((what) => words.runsUntil({ what, when }), inWritersLanguage(of.title, book));
      }),
      "; ",
    ),
  )}</p>`
}
${
  task.attention === "UNATTENDED" &&
  minutes > 0 &&
  markup`<p class="timer" hidden${attributes({ "data-minutes": minutes, "data-name": task.of.title })}><button type="button">${words.startTimer({ time: minutesText(minutes) })}</button></p>`
}
${turn(anchor(at - 1, all), anchor(at + 1, all), { back: words.back, on: words.done })}</li>`;
}

/** Cautions about a dish stand in full where it is begun, and again where it is put away. */
function cautionsOf({ task, isFirst, isLast }: CookStep, { answer }: PlanView): readonly string[] {
  if (task.kind === "WASH" || (!isFirst && !isLast)) return [];
  return answer.cautions.cautions
    .filter(({ about }) => about.some(({ kind, slug }) => kind === task.of.kind && slug === task.of.slug))
    .map(({ text }) => text);
}

/** Where the steps fit no order, each dish by itself: what is cooked ahead, then the meals. */
function dishesMarkup({ answer, book }: PlanView): readonly Content[] {
  const words = book.words.page;
  const dishes = [
    ...answer.scaled.components
      .filter(({ batches }) => batches > 0)
      .map((made) => ({ title: made.component.title, lines: made.lines, steps: resolvedSteps(made), made })),
    ...answer.scaled.meals.map((meal) => ({
      ...{ title: meal.meal.title, lines: meal.lines, steps: resolvedMealSteps(meal) },
      made: { batches: meal.factor, loads: 1 },
    })),
  ].filter(({ steps }) => steps.length > 0);
  return dishes.map(({ title, lines, steps, made }, at) => {
    const [back, on] = [anchor(at - 1, dishes.length), anchor(at + 1, dishes.length)];
    return markup`<li class="step" id="${anchor(at, dishes.length)}"><p class="progress">${words.stepOf({ step: at + 1, all: dishes.length })}</p>
<h2>${titleMarkup(title, lines, book)}</h2>${stepsMarkup(steps, lines, made, book)}
${turn(back, on, { back: words.back, on: words.done })}</li>`;
  });
}

/** Boxes, and until when each keeps. */
function putAwayMarkup(view: PlanView, steps: number, back: Content): Content {
  const { answer, book } = view;
  const words = book.words.page;
  return markup`<li class="step" id="away"><h2>${words.putAway}</h2>
<p>${words.putAwayLine}</p>
<dl class="keeping">${keptThings(answer.storage.guidance, "COMPONENT").map(
    ({ subject, rows }) =>
      markup`<div><dt>${subjectMarkup(subject, book)}</dt><dd>${placesMarkup(rows, view)}</dd></div>`,
  )}</dl>
<div class="onward">${back}</div>
${turn(anchor(steps - 1, steps), null, { back: words.back, on: words.done })}</li>`;
}
