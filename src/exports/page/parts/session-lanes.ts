import type { SessionTask } from "../../../domain/prep-session/session.js";
import { codeName } from "../../words/rule-words.js";
import type { Words } from "../../words/words.js";

/** A column of the picture: a pair of hands, one shelf, one ring, or what goes on by itself. */
export interface Lane {
  readonly title: string;
  readonly tasks: readonly SessionTask[];
}

/** Hands first, then the appliances in use, then what takes neither. A task may stand in several lanes. */
export function lanesOf(tasks: readonly SessionTask[], words: Words): readonly Lane[] {
  const cooks = numbersIn(tasks.flatMap((task) => task.cooks));
  const appliances = [...new Set(tasks.flatMap(({ appliance }) => appliance ?? []))].sort();
  return [
    ...cooks.map((cook) => ({
      title: cooks.length === 1 ? words.work.HANDS_ON : `${words.work.HANDS_ON} ${cook}`,
      tasks: tasks.filter((task) => task.cooks.includes(cook)),
    })),
    ...appliances.flatMap((code) => {
      const users = tasks.filter(({ appliance }) => appliance === code);
      const lanes = numbersIn(users.flatMap((task) => task.lanes));
      const name = codeName("appliances", code, words);
      return lanes.map((lane) => ({
        title: lanes.length === 1 ? name : `${name} ${lane}`,
        tasks: users.filter((task) => task.lanes.includes(lane)),
      }));
    }),
    ...side(
      tasks.filter((task) => task.cooks.length === 0 && task.appliance === null),
      words.page.chartStands,
    ),
  ];
}

const numbersIn = (numbers: readonly number[]): readonly number[] => [...new Set(numbers)].sort((a, b) => a - b);

/** Waiting things may overlap; each goes into the first lane that is free by then. */
function side(tasks: readonly SessionTask[], title: string): readonly Lane[] {
  const lanes: SessionTask[][] = [];
  for (const task of tasks.toSorted((a, b) => a.startMinute - b.startMinute)) {
    const free = lanes.find((lane) => (lane.at(-1)?.endMinute ?? 0) <= task.startMinute);
    if (free === undefined) lanes.push([task]);
    else free.push(task);
  }
  return lanes.map((each) => ({ title, tasks: each }));
}
