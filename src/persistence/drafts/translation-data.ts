import type { TranslatedThing, Translation } from "../../domain/model/translation.js";
import type { Batched } from "../sql/page.js";

/** Texts of plans and components in more languages. */
export interface TranslationData<Draft, Writing, Name> {
  /** `expectedVersion` null: there must be no draft yet. Returns the new version. */
  saveDraft(publisher: string, said: Translation, expectedVersion: number | null, writing: Writing): Promise<number>;
  drafts: Batched<Name, Draft>;
  /** Those of some plans and components, in every language. */
  of(publisher: string, things: readonly TranslatedThing[]): Promise<readonly Draft[]>;
}
