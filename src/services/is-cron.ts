const fields = [
  { from: 0, to: 59, names: [] },
  { from: 0, to: 23, names: [] },
  { from: 1, to: 31, names: [] },
  { from: 1, to: 12, names: ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"] },
  { from: 0, to: 7, names: ["sun", "mon", "tue", "wed", "thu", "fri", "sat"] },
] as const;

/** Whether a text is a time of five fields as crontab has them: minute, hour, day of the month, month, day of the week. */
export function isCron(text: string): boolean {
  const parts = text.trim().split(/\s+/);
  return parts.length === fields.length && parts.every((part, at) => part.split(",").every((each) => isPart(each, at)));
}

function isPart(text: string, at: number): boolean {
  const field = fields[at];
  const found = /^(?:(\*)|(\w+)(?:-(\w+))?)(?:\/(\d{1,2}))?$/.exec(text);
  if (field === undefined || found === null) return false;
  const [, all, first, last, step] = found;
  if (step !== undefined && Number(step) < 1) return false;
  if (all !== undefined) return true;
  const from = valueOf(first ?? "", field);
  const to = last === undefined ? from : valueOf(last, field);
  return from !== null && to !== null && from <= to;
}

function valueOf(text: string, { from, to, names }: (typeof fields)[number]): number | null {
  const named = names.findIndex((name) => name === text.toLowerCase());
  if (named >= 0) return named + from;
  const value = /^\d{1,2}$/.test(text) ? Number(text) : Number.NaN;
  return value >= from && value <= to ? value : null;
}
