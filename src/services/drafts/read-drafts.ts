import type { Food } from "../../domain/model/food.js";
import { translatedText, translationSlug, type Translation } from "../../domain/model/translation.js";
import { requireScope, type Actor } from "../access/actor.js";
import type { Deps, Draft, DraftDocument, DraftRef, DraftSummary } from "../deps.js";
import { componentDocument, foodDocument, packsDocument, planDocument, translationDocument } from "./draft-document.js";

/** A draft with the text its writer wrote. */
export interface DraftRead extends DraftSummary {
  readonly document: DraftDocument;
}

/** A food is listed under its first name. */
const titled = (draft: Draft<Food> | null) =>
  draft && { ...draft, value: { ...draft.value, title: draft.value.names[0]?.one ?? draft.value.slug } };

/** A translation is listed under the title that it gives. */
const called = (draft: Draft<Translation> | null) =>
  draft && {
    ...draft,
    value: {
      ...draft.value,
      title: translatedText(draft.value, "title") ?? translationSlug(draft.value),
    },
  };

/** Drafts in the order asked for, null where there is none; one read for each kind. @throws NotAllowed if one of them is not the actor's to read */
export async function readDrafts(
  { data }: Deps,
  actor: Actor,
  refs: readonly DraftRef[],
): Promise<readonly (DraftRead | null)[]> {
  for (const { publisher } of refs) requireScope(actor, "READ_DRAFTS", publisher);
  const places = new Map<DraftRef, DraftRead>();
  const note = <T extends { readonly title: string }>(
    asked: readonly DraftRef[],
    drafts: readonly (Draft<T> | null)[],
    documentOf: (draft: Draft<T>) => DraftDocument,
  ): void =>
    asked.forEach((ref, index) => {
      const draft = drafts[index];
      if (!draft) return;
      const { version, updatedAt, updatedBy, value } = draft;
      places.set(ref, { ...ref, version, updatedAt, updatedBy, title: value.title, document: documentOf(draft) });
    });
  const plans = refs.filter(({ kind }) => kind === "PLAN");
  const components = refs.filter(({ kind }) => kind === "COMPONENT");
  const foods = refs.filter(({ kind }) => kind === "FOOD");
  if (foods.length > 0) {
    const drafts = await data.publisherFoods.drafts(foods);
    note(foods, drafts.map(titled), foodDocument);
  }
  const packs = refs.filter(({ kind }) => kind === "PACKS");
  if (packs.length > 0) {
    const drafts = await data.publisherPacks.drafts(packs);
    note(packs, drafts.map(titled), packsDocument);
  }
  const translations = refs.filter(({ kind }) => kind === "TRANSLATION");
  if (translations.length > 0) {
    const drafts = await data.translations.drafts(translations);
    note(translations, drafts.map(called), translationDocument);
  }
  if (plans.length > 0) note(plans, await data.plans.drafts(plans), planDocument);
  if (components.length > 0) note(components, await data.components.drafts(components), componentDocument);
  return refs.map((ref) => places.get(ref) ?? null);
}
