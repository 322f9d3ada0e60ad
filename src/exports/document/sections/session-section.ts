import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import type { DaySession } from "../../../domain/plan/session/split-session.js";
import type { PrepSession, SessionTask } from "../../../domain/prep-session/session.js";
import { loadWords } from "../../words/load-words.js";
import { momentText, timeText } from "../../words/clock-text.js";
import { heatText } from "../../words/degree-text.js";
import { paragraph, plain, section, tableOf, text, type Block, type Lines } from "../document.js";
import type { NameBook } from "../../words/name-book.js";
import { sessionProblemText } from "../../sentences/session-problem-text.js";
import { daySentences, sessionSentences } from "../../sentences/session-sentences.js";
import { codeName } from "../../words/rule-words.js";

/** The session in the order of its work, with clock times where the reader gave a start. */
export function sessionSection(answer: PlanAnswer, book: NameBook): readonly Block[] {
  const { session, sessions, sessionProblems } = answer;
  const { words } = book;
  const divided = sessions.length > 1 ? sessions.flatMap((each) => daySection(each, answer, book)) : [];
  const over = divided.length > 0 ? [words.overDays({ sessions: sessions.length })] : [];
  if (session === null) {
    const why = sessionProblems.map((problem) => sessionProblemText(problem, answer.scaled, words));
    return section(2, words.session, [
      said([divided.length > 0 ? words.noOneSession : words.noOrder, ...why, ...over]),
      ...divided,
    ]);
  }
  if (session.tasks.length === 0) return [];
  return section(2, words.session, [
    said([...sessionSentences(session, answer, words), ...over]),
    ...(divided.length > 0 ? divided : workTable(session, answer, book)),
  ]);
}

const said = (sentences: readonly string[]): Block => paragraph(...sentences.map((each) => [text(each)]));

const workTable = (session: PrepSession, { household }: PlanAnswer, book: NameBook): readonly Block[] =>
  tableOf(
    [book.words.time, book.words.what, book.words.how],
    session.tasks.map((task) => [
      plain(taskTimes(task, household.session?.zone ?? null, book)),
      taskLines(task, book),
      howLines(task, book),
    ]),
  );

/** One of several days' work. */
const daySection = (each: DaySession, answer: PlanAnswer, book: NameBook): readonly Block[] =>
  section(3, book.words.sessionOfDay({ day: each.day }), [
    said(daySentences(each, answer, book.words)),
    ...workTable(each.session, answer, book),
  ]);

/** "09:00 – 09:12"; without a start, hours and minutes from it. */
function taskTimes(task: SessionTask, zone: string | null, { words, reader }: NameBook): string {
  const { startsAt, endsAt } = task;
  if (startsAt === null || endsAt === null || zone === null) {
    if (task.eveningBefore) return words.eveningBefore;
    return `${fromStart(task.startMinute)} – ${fromStart(task.endMinute)}`;
  }
  const show = task.eveningBefore ? momentText : timeText;
  return `${show(startsAt, zone, reader.locale)} – ${show(endsAt, zone, reader.locale)}`;
}

const fromStart = (minute: number): string => {
  const whole = Math.round(minute);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
};

/** The same as `taskText`, each part in its language. */
const taskLines = (task: SessionTask, book: NameBook): Lines =>
  task.kind === "WASH"
    ? plain(taskText(task, book))
    : [[text(`${task.of.title}:`, book.languageOf(task.of.title)), text(task.text, book.languageOf(task.text))]];

/** What to do, and for what: "Boiled barley: Rinse the barley." */
export function taskText(task: SessionTask, { words }: Pick<NameBook, "words">): string {
  if (task.kind === "WASH")
    return words.wash({
      machine: task.appliance === null ? words.machine : codeName("appliances", task.appliance, words),
    });
  return `${task.of.title}: ${task.text}`;
}

function howLines(task: SessionTask, { words, reader }: NameBook): Lines {
  const { appliance, lanes, load, cooks, attention } = task;
  const heat = heatText(task, reader);
  const machine =
    appliance === null ? [] : [[codeName("appliances", appliance, words), lanes.join(" + ")].join(" ").trim()];
  const hands =
    cooks.length > 0 && Math.max(...cooks) > 1 ? words.cook({ numbers: cooks.join(" + ") }) : words.work[attention];
  const said = [
    hands,
    ...machine,
    ...(heat === null ? [] : [heat]),
    ...(load === null ? [] : [loadWords(load, words)]),
  ];
  return plain(said.join(", "));
}
