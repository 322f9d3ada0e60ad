import { isOnList, usualSpelling, type CodeLists } from "../../../domain/model/code-lists.js";
import type { Problem } from "../../../domain/problem.js";
import { nearestCodes } from "../../../domain/quantity/naming/nearest-words.js";
import type { DocumentProblem, ReadDocument } from "../read-documents.js";
import type { WrittenCode } from "./written-codes.js";

/** Of one code, what its list says: null where it has it, or where nobody gave the list. */
export function unknownCode({ list: name, written, path }: Omit<WrittenCode, "at">, lists: CodeLists): Problem | null {
  const list = lists[name];
  if (list === undefined || isOnList(list, usualSpelling(name, written))) return null;
  const nearest = nearestCodes(written, list.codes);
  return { code: "UNKNOWN_CODE", path, list: name, written: written.slice(0, 80), nearest };
}

/** The codes of documents that their lists do not have, each at its place and with the nearest that they have. */
export const checkCodes = (
  documents: readonly Pick<ReadDocument, "file" | "codes" | "place">[],
  lists: CodeLists,
): readonly DocumentProblem[] =>
  documents.flatMap(({ file, codes, place }) =>
    codes.flatMap((code): readonly DocumentProblem[] => {
      const problem = unknownCode(code, lists);
      const { path, at } = code;
      return problem === null ? [] : [{ file, ...place(path, at), path, problem }];
    }),
  );
