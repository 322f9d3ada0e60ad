import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { kitchenOf } from "../../../domain/plan/session/session-input.js";
import { clearingUpMinutes } from "../../../domain/plan/session/session-length.js";
import { wholeDay, type DaySession } from "../../../domain/plan/session/split-session.js";
import type { PrepSession, SessionTask } from "../../../domain/prep-session/session.js";
import { sessionProblemText } from "../../sentences/session-problem-text.js";
import { daySentences, lateSentences, lengthSentences } from "../../sentences/session-sentences.js";
import { criticalText } from "../../sentences/session-text.js";
import { andList } from "../../words/and-list.js";
import { heatBothText } from "../../words/degree-text.js";
import type { NameBook } from "../../words/name-book.js";
import { minutesText } from "../../words/minutes-text.js";
import { dateOfDay, dayText, wallClock } from "../dates.js";
import { markup, type Content } from "../markup.js";
import { folded, part, sentences, type PlanView } from "../plan-view.js";
import { codeName } from "../../words/rule-words.js";
import { sessionPicture } from "./session-picture.js";
import { inWritersLanguage, writersLanguage } from "../writers-language.js";

/** The order of the work: how long it takes, when each dish is worked on, and every step folded away. */
export function sessionPart(view: PlanView, toKitchen: Content): Content {
  const { answer, book } = view;
  const words = book.words.page;
  const { session, sessions, sessionProblems } = answer;
  const shown = (body: Content): Content => part("session", words.orderOfWork, body);
  const divided = sessions.length > 1 && [
    markup`<p>${book.words.overDays({ sessions: sessions.length })}</p>`,
    sessions.map((each, at) => dayMarkup(each, at, view)),
    toKitchen,
  ];
  if (session === null) {
    return shown([
      markup`<p class="flag">${divided === false ? book.words.noOrder : book.words.noOneSession}</p>`,
      markup`<ul>${sessionProblems.map((problem) => markup`<li>${sessionProblemText(problem, answer.scaled, book.words)}</li>`)}</ul>`,
      divided,
    ]);
  }
  if (session.tasks.length === 0) return shown(markup`<p>${words.nothingAhead}</p>`);
  if (divided !== false) return shown([summary(session, view), divided]);
  return shown([summary(session, view), phasesMarkup(session, view), toKitchen, workMarkup(session, 0, view)]);
}

function workMarkup(session: PrepSession, at: number, view: PlanView): Content {
  const words = view.book.words.page;
  const numbers = new Map(session.tasks.map(({ id }, index) => [id, index + 1]));
  return [
    folded(words.everyStep({ count: session.tasks.length }), [
      markup`<ol class="work">${session.tasks.map((task) => taskMarkup(task, view))}</ol>`,
      folded(
        words.why,
        markup`<ul class="reasons">${session.criticalPath.map((each) => markup`<li>${criticalText(each, session, view.book.words)}</li>`)}</ul>`,
      ),
    ]),
    markup`<div class="wide">${folded(words.chart, [
      markup`<div class="chart">${sessionPicture(session.tasks, numbers, view, `chart-${at}`)}</div>`,
      legend(session, view),
    ])}</div>`,
  ];
}

/** One of several days' work. */
function dayMarkup(each: DaySession, at: number, view: PlanView): Content {
  const { answer, book } = view;
  const { scaled, household, reader } = answer;
  const date = dateOfDay(each.day, household.session);
  return markup`<h3>${book.words.page.cookingDayOf({ day: each.day })}${date !== null && `, ${dayText(date, book)}`}</h3>
<p>${daySentences(each, { scaled, household, reader }, book.words).join(" ")}</p>
${phasesMarkup(each.session, view)}
${workMarkup(each.session, at, view)}`;
}

function summary(session: PrepSession, { answer, book }: PlanView): Content {
  const { household, scaled, reader } = answer;
  const words = book.words.page;
  const clearing = clearingUpMinutes(session);
  const date = dateOfDay(0, household.session);
  const asked = { scaled, household, reader };
  return markup`<p>${sentences([
    words.total({ all: minutesText(session.totalMinutes), busy: minutesText(session.handsOnMinutes) }),
    clearing > 0 && words.clearingUp({ time: minutesText(clearing) }),
    household.session !== null &&
      date !== null &&
      words.fromTo({
        day: dayText(date, book),
        from: wallClock(0, household.session, book) ?? "",
        to: wallClock(session.totalMinutes, household.session, book) ?? "",
        place: cityOf(household.session.zone),
      }),
    ...lengthSentences(session, asked, book.words),
    ...lateSentences(wholeDay(scaled, session), asked, book.words),
    words.cooks({ count: kitchenOf(scaled.bundle.plan.kitchen, household).cooks }),
    session.optimal ? words.shortest : words.notShorterThan({ time: minutesText(session.lowerBoundMinutes) }),
    session.assumedAppliances.length > 0 &&
      words.notListed({
        appliances: andList(
          session.assumedAppliances.map((code) => codeName("appliances", code, book.words)),
          book.words,
        ),
      }),
  ])}</p>`;
}

/** `Europe/Lisbon` is the clock of Lisbon. */
const cityOf = (zone: string): string => (zone.split("/").at(-1) ?? zone).replaceAll("_", " ");

/** When each dish is worked on, from its first step to its last. */
function phasesMarkup(session: PrepSession, view: PlanView): Content {
  const { book } = view;
  const evening = session.tasks.filter(({ eveningBefore }) => eveningBefore);
  const day = session.tasks.filter(({ eveningBefore }) => !eveningBefore);
  const dishes = [...new Map(day.map((task) => [`${task.of.kind} ${task.of.slug}`, task.of])).values()];
  return markup`<ol class="phases">${evening.map(
    (task) =>
      markup`<li class="evening"><b>${book.words.eveningBefore}</b> ${inWritersLanguage(task.of.title, book)}: ${inWritersLanguage(task.text, book)}</li>`,
  )}${dishes.map(({ kind, slug, title }) => {
    const own = day.filter(({ of }) => of.kind === kind && of.slug === slug);
    const from = Math.min(...own.map(({ startMinute }) => startMinute));
    const to = Math.max(...own.map(({ endMinute }) => endMinute));
    return markup`<li><b>${minuteText(from, view.answer, book)}</b> <span${writersLanguage(title, book)}>${title}</span> <span class="quiet">${minutesText(to - from)}</span></li>`;
  })}</ol>`;
}

/** `14:05`, or `5 min in` where no start is known. */
export function minuteText(minute: number, { household }: PlanAnswer, book: PlanView["book"]): string {
  const words = book.words.page;
  const clock = wallClock(minute, household.session, book);
  if (clock !== null) return clock;
  if (minute === 0) return words.atTheStart;
  return minute < 0
    ? words.minutesBefore({ time: minutesText(-minute) })
    : words.minutesIn({ time: minutesText(minute) });
}

const legend = ({ tasks }: PrepSession, { book }: PlanView): Content => {
  const words = book.words.page;
  return markup`<p class="legend"><span class="busy">${words.chartBusy}</span> <span class="alone">${words.chartAlone}</span>${
    tasks.some(({ kind }) => kind === "WASH") && markup` <span class="wash">${words.chartWash}</span>`
  }</p>`;
};

/** Of what boils hard nobody goes far away. */
const isOnTheHob = ({ appliance }: SessionTask): boolean => appliance === "hob-ring";

/** Whether the cook is needed. */
function attentionText(task: SessionTask, { book }: Pick<PlanView, "book">): string {
  const words = book.words.page;
  if (task.attention === "HANDS_ON") return words.busy;
  return isOnTheHob(task) ? words.aloneNearby : words.alone;
}

/** What there is to know of a piece of work beside its words: how long, with what, how hot, which part of it. */
export function taskFacts(task: SessionTask, view: Pick<PlanView, "answer" | "book">): readonly string[] {
  const { book } = view;
  return [
    minutesText(task.endMinute - task.startMinute),
    attentionText(task, view),
    task.appliance === null ? null : codeName("appliances", task.appliance, book.words),
    heatBothText(task, view.answer.reader),
    task.load === null ? null : partText(task.load, book),
  ].filter((fact) => fact !== null);
}

const partText = ({ first, last, of }: NonNullable<SessionTask["load"]>, { words: { page } }: NameBook): string =>
  first === last ? page.partOf({ first, of }) : page.partsOf({ first, last, of });

/** A piece of work in its author's words. */
export const taskWords = (task: SessionTask, { book }: Pick<PlanView, "book">): Content =>
  task.kind === "WASH"
    ? book.words.page.wash({
        machine: task.appliance === null ? book.words.machine : codeName("appliances", task.appliance, book.words),
      })
    : inWritersLanguage(task.text, book);

function taskMarkup(task: SessionTask, view: PlanView): Content {
  const { book } = view;
  const when = task.eveningBefore
    ? [book.words.eveningBefore, wallClock(task.startMinute, view.answer.household.session, book)]
    : [minuteText(task.startMinute, view.answer, book)];
  return markup`<li${task.eveningBefore && markup` class="evening"`}><span class="when">${when.filter((each) => each !== null).join(", ")}</span> <b${writersLanguage(task.of.title, book)}>${task.of.title}</b>
<span class="do">${taskWords(task, view)}</span> <span class="quiet">${taskFacts(task, view).join(", ")}</span></li>`;
}
