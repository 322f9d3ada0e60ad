import type { Output } from "./show-outcome.js";

/** Says how far long work is, on standard error. */
export interface Progress {
  /** `total` null: nobody knows how much there is. */
  at(doing: string, done: number, total: number | null): void;
  /** Clears the line of a terminal, before anything else is said. */
  end(): void;
}

const barWidth = 30;
/** Of one thing a log has a line at most this often. */
const logEveryMs = 5_000;

/** A bar that is drawn anew on a terminal; lines in a log, of one thing no more than one in five seconds. */
export function progressOn({ err, isTerminal }: Output, asJson: boolean, now = () => performance.now()): Progress {
  const drawn = isTerminal && !asJson;
  let last = -Infinity;
  let before = "";
  let said = "";
  return {
    at: (doing, done, total) => {
      const line = drawn ? bar(doing, done, total) : words(doing, done, total);
      if (line === said || (!drawn && doing === before && now() - last < logEveryMs)) return;
      last = now();
      before = doing;
      said = line;
      err(drawn ? `\r\u001b[K${line}` : `${line}\n`);
    },
    end: () => {
      if (drawn && said !== "") err("\r\u001b[K");
    },
  };
}

const count = (value: number): string => value.toLocaleString("en-GB");

function words(doing: string, done: number, total: number | null): string {
  return total === null ? `${doing}: ${count(done)}` : `${doing}: ${count(done)} of ${count(total)}`;
}

function bar(doing: string, done: number, total: number | null): string {
  if (total === null) return words(doing, done, total);
  const share = total === 0 ? 1 : Math.min(1, done / total);
  const full = Math.round(share * barWidth);
  return `${"#".repeat(full)}${"-".repeat(barWidth - full)} ${Math.floor(share * 100)} % ${words(doing, done, total)}`;
}
