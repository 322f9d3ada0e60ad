import type { CodeListName } from "../code-list-name.js";
import { spellings } from "./spellings.js";

export interface CodeList {
  /** Those that are offered in place of an unknown one. */
  readonly codes: readonly string[];
  /** Whether a text is one of the codes; left out: it is among `codes`. For lists with parts, such as `en-GB`. */
  readonly has?: (code: string) => boolean;
}

/** The lists that a reader of codes knows. One that is left out is not looked at. */
export type CodeLists = Readonly<Partial<Record<CodeListName, CodeList>>>;

/** A code by its usual spelling: `soya` is `soy`. A word that the table does not have stays as it is, known or not. */
export const usualSpelling = (list: CodeListName, written: string): string => {
  const table = spellings[list];
  return table !== undefined && Object.hasOwn(table, written) ? (table[written] ?? written) : written;
};

/** Whether a list has a code in its usual spelling. */
export const isOnList = ({ codes, has }: CodeList, code: string): boolean => has?.(code) ?? codes.includes(code);
