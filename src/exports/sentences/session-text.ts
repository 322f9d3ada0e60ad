import type { CriticalTask, PrepSession, SessionTask } from "../../domain/prep-session/session.js";
import { andList } from "../words/and-list.js";
import { codeName } from "../words/rule-words.js";
import type { Words } from "../words/words.js";

const shortened = (text: string): string => (text.length <= 60 ? text : `${text.slice(0, 57).trimEnd()}…`);

const titleOf = (task: SessionTask | undefined, words: Words): string =>
  task === undefined
    ? words.critical.something
    : task.kind === "WASH"
      ? words.critical.washing({ machine: machineOf(task, words) })
      : words.quoted({ name: shortened(task.text) });

const machineOf = ({ appliance }: SessionTask, words: Words): string =>
  appliance === null ? words.machine : codeName("appliances", appliance, words);

/** Why a task of the critical path begins when it does, as one sentence. */
export function criticalText(
  { task, because }: CriticalTask,
  { tasks }: Pick<PrepSession, "tasks">,
  words: Words,
): string {
  const byId = new Map(tasks.map((each) => [each.id, each]));
  const own = byId.get(task);
  const said = {
    task: titleOf(own, words),
    others: andList(
      because.tasks.map((id) => titleOf(byId.get(id), words)),
      words,
    ),
  };
  return because.kind === "APPLIANCE"
    ? words.critical.APPLIANCE({ ...said, appliance: own === undefined ? words.machine : machineOf(own, words) })
    : words.critical[because.kind](said);
}
