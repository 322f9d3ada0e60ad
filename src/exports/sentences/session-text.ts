import type { CriticalTask, PrepSession, SessionTask } from "../../domain/prep-session/session.js";

const shortened = (text: string): string => (text.length <= 60 ? text : `${text.slice(0, 57).trimEnd()}…`);

const titleOf = (task: SessionTask | undefined): string =>
  task === undefined
    ? "something"
    : task.kind === "WASH"
      ? `washing the ${task.appliance ?? "machine"}`
      : `"${shortened(task.text)}"`;

/** Why a task of the critical path begins when it does, as one English sentence. */
export function criticalText({ task, because }: CriticalTask, { tasks }: Pick<PrepSession, "tasks">): string {
  const byId = new Map(tasks.map((each) => [each.id, each]));
  const own = byId.get(task);
  const name = titleOf(own);
  const others = because.tasks.map((id) => titleOf(byId.get(id))).join(" and ");
  switch (because.kind) {
    case "BEGINNING":
      return `The session begins with ${name}.`;
    case "PRECEDENCE":
      return `${name} follows ${others}.`;
    case "HANDS":
      return `${name} waits until the hands are free of ${others}.`;
    case "APPLIANCE":
      return `${name} waits until the ${own?.appliance ?? "appliance"} is free of ${others}.`;
    case "TEMPERATURE":
      return `${name} waits until the oven may leave the temperature of ${others}.`;
    case "GREATEST_WAIT":
      return `${name} is kept back, so that ${others} can follow in time.`;
    case "CHOICE":
      return `${name} could begin earlier; nothing would be gained.`;
  }
}
