import type { PrepSession, SessionTask } from "../../../domain/prep-session/session.js";
import { wholeDay, type DaySession } from "../../../domain/plan/session/split-session.js";
import { kitchenOf } from "../../../domain/plan/session/session-input.js";
import { clearingUpMinutes } from "../../../domain/plan/session/session-length.js";
import { heatText } from "../../words/degree-text.js";
import { minutesText } from "../../words/minutes-text.js";
import { sessionProblemText } from "../../sentences/session-problem-text.js";
import { daySentences, lateSentences, lengthSentences } from "../../sentences/session-sentences.js";
import { criticalText } from "../../sentences/session-text.js";
import { clockText, dateOfDay, dayText } from "../dates.js";
import { markup, type Content } from "../markup.js";
import { folded, part, sentences, type PlanView } from "../plan-view.js";
import { applianceName } from "./session-lanes.js";
import { sessionPicture } from "./session-picture.js";
import { wordsFor } from "../../words/words-for.js";

// The words around it are English.
const english = wordsFor("en");

/** The order of the work: a picture, and the same as a numbered list. */
export function sessionPart({ answer }: PlanView): Content {
  const { session, sessions, sessionProblems } = answer;
  const divided = sessions.length > 1 && [
    markup`<p>${english.overDays({ sessions: sessions.length })}</p>`,
    sessions.map((each) => dayMarkup(each, answer)),
  ];
  if (session === null) {
    return part("session", "The session", [
      markup`<p class="flag">${divided === false ? english.noOrder : english.noOneSession}</p>`,
      markup`<ul>${sessionProblems.map((problem) => markup`<li>${sessionProblemText(problem, answer.scaled, english)}</li>`)}</ul>`,
      divided,
    ]);
  }
  if (session.tasks.length === 0) return part("session", "The session", markup`<p>There is nothing to do ahead.</p>`);
  if (divided !== false) return part("session", "The session", [summary(session, answer), divided]);
  return part("session", "The session", [
    summary(session, answer),
    workMarkup(session, answer),
    folded(
      "Why it takes as long as it does",
      markup`<ul class="reasons">${session.criticalPath.map((each) => markup`<li>${criticalText(each, session, english)}</li>`)}</ul>`,
    ),
  ]);
}

function workMarkup(session: PrepSession, answer: PlanView["answer"]): Content {
  const numbers = new Map(session.tasks.map(({ id }, at) => [id, at + 1]));
  return markup`<div class="beds"><div class="picture">${sessionPicture(session.tasks, numbers, answer.household.session)}${legend(session)}</div>
<ol class="work">${session.tasks.map((task) => taskMarkup(task, session, answer))}</ol></div>`;
}

/** One of several days' work. */
function dayMarkup(each: DaySession, answer: PlanView["answer"]): Content {
  const { scaled, household } = answer;
  const date = dateOfDay(each.day, answer.household.session);
  return markup`<h3>${english.sessionOfDay({ day: each.day })}</h3>
<p>${sentences([date !== null && `${dayText(date)}.`, ...daySentences(each, { scaled, household }, english)])}</p>
${workMarkup(each.session, answer)}`;
}

function summary(session: PrepSession, { household, scaled }: PlanView["answer"]): Content {
  const kitchen = kitchenOf(scaled.bundle.plan.kitchen, household);
  const clearing = clearingUpMinutes(session);
  const date = dateOfDay(0, household.session);
  const proved = session.optimal
    ? "No order of this work is shorter."
    : `No order can be shorter than ${minutesText(session.lowerBoundMinutes)}.`;
  return markup`<p>${sentences([
    household.session === null || date === null
      ? "Times count from the start; give a starting time above to see them on the clock."
      : `${dayText(date)}, from ${clockText(0, household.session)} to ${clockText(session.totalMinutes, household.session)} (${household.session.zone}).`,
    `${minutesText(session.totalMinutes)} in all, ${minutesText(session.handsOnMinutes)} of them with your hands, which are free after ${minutesText(session.handsFreeMinute)}.`,
    clearing > 0 && english.clearingUp({ minutes: minutesText(clearing) }),
    ...lengthSentences(session, { scaled, household }, english),
    ...lateSentences(wholeDay(scaled, session), { scaled, household }, english),
    kitchen.cooks === 1 ? "For one cook." : `For ${kitchen.cooks} cooks.`,
    proved,
    session.assumedAppliances.length > 0 &&
      `The plan does not list ${session.assumedAppliances.map(applianceName).join(" or ")}; one of each was assumed.`,
  ])}</p>`;
}

const legend = ({ tasks }: PrepSession): Content =>
  markup`<p class="legend"><span class="busy">filled: your hands are busy</span> <span class="alone">outlined: it goes on by itself</span>${
    tasks.some(({ kind }) => kind === "WASH") && markup` <span class="wash">dotted: washing up in between</span>`
  }</p>`;

function taskMarkup(task: SessionTask, session: PrepSession, { household, reader }: PlanView["answer"]): Content {
  const clock = `${clockText(task.startMinute, household.session)}–${clockText(task.endMinute, household.session)}`;
  const facts = [
    task.eveningBefore ? "the evening before" : null,
    minutesText(task.endMinute - task.startMinute),
    task.attention === "HANDS_ON" ? "hands on" : "by itself",
    task.appliance === null ? null : applianceName(task.appliance),
    heatText(task, reader),
    task.load === null ? null : loadText(task.load),
  ].filter((fact) => fact !== null);
  const text = task.kind === "WASH" ? `Wash the ${applianceName(task.appliance ?? "machine")}.` : task.text;
  return markup`<li${session.eveningBefore.includes(task.id) && markup` class="evening"`}><span class="when">${clock}</span> <b>${task.of.title}</b>
<span class="do">${text}</span> <span class="quiet">${facts.join(", ")}</span></li>`;
}

const loadText = ({ first, last, of }: NonNullable<SessionTask["load"]>): string =>
  first === last ? `load ${first} of ${of}` : `loads ${first} to ${last} of ${of}`;
