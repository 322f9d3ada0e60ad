import { isOnList, usualSpelling, type CodeLists } from "../../domain/model/code-lists.js";
import type { Problem } from "../../domain/problem.js";
import type { DocumentProblem, ReadDocument } from "./read-documents.js";
import { nearestCodes } from "./nearest-words.js";

/** The codes of documents that their lists do not have, each at its place and with the nearest that they have. */
export const checkCodes = (
  documents: readonly Pick<ReadDocument, "file" | "codes" | "place">[],
  lists: CodeLists,
): readonly DocumentProblem[] =>
  documents.flatMap(({ file, codes, place }) =>
    codes.flatMap(({ list: name, written, path, at }): readonly DocumentProblem[] => {
      const list = lists[name];
      if (list === undefined || isOnList(list, usualSpelling(name, written))) return [];
      const nearest = nearestCodes(written, list.codes);
      const problem: Problem = { code: "UNKNOWN_CODE", path, list: name, written: written.slice(0, 80), nearest };
      return [{ file, ...place(path, at), path, problem }];
    }),
  );
