import { wordsOf, type Credit, type WordsOfPlan } from "../../domain/model/writers-words.js";

interface WordsWritten {
  readonly introduction?: string | undefined;
  readonly notes?: string | undefined;
  readonly tips?: string | undefined;
  readonly equipment?: readonly string[];
  readonly credits?: readonly Credit[];
  readonly tags?: readonly string[];
}

/** What a writer says of a thing, without what is empty. */
export const readWords = ({ introduction, notes, tips, equipment, credits, tags }: WordsWritten): WordsOfPlan =>
  wordsOf({
    ...(introduction !== undefined && { introduction }),
    ...(notes !== undefined && { notes }),
    ...(tips !== undefined && { tips }),
    ...(equipment !== undefined && equipment.length > 0 && { equipment }),
    ...(credits !== undefined && credits.length > 0 && { credits }),
    ...(tags !== undefined && tags.length > 0 && { tags }),
  });
