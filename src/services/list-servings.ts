/** What a plan costs and leaves over at every number of servings in a range, or the caller's problems. */
export { servingsTableInTurns as listServings, type ServingsRow } from "../domain/plan/servings-table.js";
