import type { SessionTask } from "../../domain/prep-session/session.js";
import type { Words } from "./words.js";

/** "load 2 of 3", "loads 1 to 2 of 3". */
export const loadWords = ({ first, last, of }: NonNullable<SessionTask["load"]>, words: Words): string =>
  words.load({ first, last, of, several: first === last ? "no" : "yes" });
