import type { NoAmount } from "../parsed-line.js";

const rows: readonly (readonly [NoAmount, string])[] = [
  ["PINCH", "pinch pinches prise prisen pr messerspitze messerspitzen msp pincée pincées pizca pizcas szczypta szczypty szczypt"],
  ["DASH", "dash dashes splash splashes drizzle glug squeeze schuss spritzer filet trait chorrito chorro chlust odrobina odrobinę"],
  ["SOME", "some few little etwas einige ein_paar quelques peu algunos algunas unos unas poco kilka trochę couple"],
]; // prettier-ignore

/** Words that stand where a measure would, but measure nothing. Languages do not clash here, so one table serves all. */
export const amountlessWords: ReadonlyMap<string, NoAmount> = new Map(
  rows.flatMap(([kind, words]) => words.split(" ").map((word): [string, NoAmount] => [word.replace("_", " "), kind])),
);
