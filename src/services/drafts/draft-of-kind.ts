import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { Plan } from "../../domain/model/plan.js";
import type { Translation } from "../../domain/model/translation.js";
import type { Batched } from "../../persistence/sql/page.js";
import type { Data, Draft, DraftKind, DraftWriting, OwnedSlug } from "../deps.js";

/** What a draft says, by its kind. */
export type DraftValue =
  | { readonly kind: "PLAN"; readonly value: Plan }
  | { readonly kind: "COMPONENT"; readonly value: Component }
  | { readonly kind: "TRANSLATION"; readonly value: Translation }
  | { readonly kind: "FOOD" | "PACKS"; readonly value: Food };

/** Saves the draft of a publisher. `expectedVersion` null: there must be none yet. Its new version. */
export function saveDraftOf(
  data: Data,
  publisher: string,
  draft: DraftValue,
  expectedVersion: number | null,
  writing: DraftWriting,
): Promise<number> {
  switch (draft.kind) {
    case "PLAN":
      return data.plans.saveDraft(draft.value, expectedVersion, writing);
    case "COMPONENT":
      return data.components.saveDraft(publisher, draft.value, expectedVersion, writing);
    case "TRANSLATION":
      return data.translations.saveDraft(publisher, draft.value, expectedVersion, writing);
    case "FOOD":
      return data.publisherFoods.saveDraft(publisher, draft.value, expectedVersion, writing);
    case "PACKS":
      return data.publisherPacks.saveDraft(publisher, draft.value, expectedVersion, writing);
  }
}

/** The draft of a kind; null: there is none. */
export async function findDraftOf(data: Data, kind: DraftKind, name: OwnedSlug): Promise<Draft<unknown> | null> {
  const tables: Readonly<Record<DraftKind, { readonly drafts: Batched<OwnedSlug, Draft<unknown>> }>> = {
    PLAN: data.plans,
    COMPONENT: data.components,
    TRANSLATION: data.translations,
    FOOD: data.publisherFoods,
    PACKS: data.publisherPacks,
  };
  const [found = null] = await tables[kind].drafts([name]);
  return found;
}
