import type { Household } from "../../../domain/model/household.js";
import type { SessionTask } from "../../../domain/prep-session/session.js";
import { clockText, startMinuteOfHour } from "../dates.js";
import { attributes, markup, type Content } from "../markup.js";
import type { PlanView } from "../plan-view.js";
import type { Words } from "../../words/words.js";
import { lanesOf, type Lane } from "./session-lanes.js";

const size = { clock: 46, lane: 44, gap: 6, head: 66, least: 13, perMinute: 2.6, tallest: 1000, rest: 10 } as const;

/** One stretch of time, drawn from the top downwards. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly tasks: readonly SessionTask[];
}

/**
 * The session as a bed seen from above: a row for each pair of hands and each appliance, time going down, every piece of work
 * with its number in the list beside it. The evening before is a bed of its own.
 */
export function sessionPicture(
  tasks: readonly SessionTask[],
  numbers: ReadonlyMap<string, number>,
  { answer, book }: PlanView,
  id: string,
): Content {
  const { session } = answer.household;
  const evening = tasks.filter((task) => task.eveningBefore);
  const day = tasks.filter((task) => !task.eveningBefore);
  const beds = [
    { id: `${id}-evening`, title: book.words.eveningBefore, tasks: evening },
    { id: `${id}-day`, title: book.words.page.orderOfWork, tasks: day },
  ].filter((bed) => bed.tasks.length > 0);
  return beds.map(({ id: bed, title, tasks: own }) => {
    const stretch = { from: Math.min(...own.map(start)), to: Math.max(...own.map(end)), tasks: own };
    const label = book.words.page.chartOf({
      title,
      from: clockText(stretch.from, session),
      to: clockText(stretch.to, session),
    });
    return bedMarkup(bed, label, stretch, numbers, session, book.words);
  });
}

const start = ({ startMinute }: SessionTask): number => startMinute;
const end = ({ endMinute }: SessionTask): number => endMinute;

/** So tall that the shortest piece of work has room for its number, within reason. */
function scaleOf({ from, to, tasks }: Stretch): number {
  const shortest = Math.min(...tasks.map((task) => Math.max(1, end(task) - start(task))));
  const length = Math.max(1, to - from);
  return Math.min(Math.max(size.perMinute, size.least / shortest), size.tallest / length);
}

const tickSteps = [5, 10, 15, 30, 60, 120, 240, 720, 1440] as const;

/** Round times on the wall clock, at least a line of text apart. */
function ticksOf({ from, to }: Stretch, perMinute: number, session: Household["session"]): readonly number[] {
  const step = tickSteps.find((each) => each * perMinute >= 30) ?? 1440;
  const offset = startMinuteOfHour(session) % step;
  const ticks: number[] = [];
  for (let at = Math.ceil((from + offset) / step) * step - offset; at <= to; at += step) ticks.push(at);
  return ticks;
}

const round = (value: number): string => String(Number(value.toFixed(1)));

function bedMarkup(
  id: string,
  label: string,
  stretch: Stretch,
  numbers: ReadonlyMap<string, number>,
  session: Household["session"],
  words: Words,
): Content {
  const lanes = lanesOf(stretch.tasks, words);
  const perMinute = scaleOf(stretch);
  const y = (minute: number): number => size.head + (minute - stretch.from) * perMinute;
  const width = size.clock + lanes.length * size.lane + size.gap;
  const height = y(stretch.to) + size.rest;
  return markup`<svg class="bed"${attributes({
    role: "img",
    "aria-labelledby": `bed-${id}`,
    viewBox: `0 0 ${width} ${round(height)}`,
    width,
    height: round(height),
  })}>
<title id="bed-${id}">${label}</title>
${ticksOf(stretch, perMinute, session).map(
  (
    at,
  ) => markup`<line class="tick"${attributes({ x1: size.clock - 4, x2: width, y1: round(y(at)), y2: round(y(at)) })}/>
<text class="clock"${attributes({ x: size.clock - 8, y: round(y(at) + 4) })}>${clockText(at, session)}</text>`,
)}
${lanes.map((lane, at) => laneMarkup(lane, size.clock + at * size.lane, y, numbers))}
</svg>`;
}

/** A label on a stake at the head of the row, the row's string, and what grows along it. */
function laneMarkup(
  { title, tasks }: Lane,
  left: number,
  y: (minute: number) => number,
  numbers: ReadonlyMap<string, number>,
): Content {
  const middle = left + size.lane / 2;
  return markup`<g class="row"><text class="stake"${attributes({
    transform: `translate(${round(middle + 4)} ${size.head - 8}) rotate(-60)`,
  })}>${title}</text>
${tasks.map((task) => {
  const top = y(task.startMinute);
  const tall = Math.max(3, y(task.endMinute) - top - 1.5);
  return markup`<rect class="${classOf(task)}"${attributes({
    x: left + size.gap / 2,
    y: round(top),
    width: size.lane - size.gap,
    height: round(tall),
    rx: 3,
  })}/>
<text class="${classOf(task)} ${tall < size.least ? "small number" : "number"}"${attributes({ x: middle, y: round(top + (tall < size.least ? tall / 2 + 3 : Math.min(tall / 2 + 4, 15))) })}>${
    numbers.get(task.id) ?? ""
  }</text>`;
})}</g>`;
}

const classOf = ({ kind, attention }: SessionTask): string =>
  kind === "WASH" ? "wash" : attention === "HANDS_ON" ? "busy" : "alone";
