import type { Component } from "../../domain/model/component.js";
import type { Plan } from "../../domain/model/plan.js";
import type { TranslatedThing, Translation } from "../../domain/model/translation.js";
import type { AnyDocument } from "../../imports/documents/document-kinds.js";
import type { Data } from "../deps.js";

interface Translated {
  /** Drafts of the plans that documents translate. */
  readonly plans: readonly Plan[];
  /** What is saved of the translations of plans and components among the documents, and of what documents translate. */
  readonly translations: readonly Translation[];
}

/** What documents translate, and what is saved of their translations. */
export async function loadTranslated(
  { data }: { readonly data: Data },
  publisher: string,
  documents: readonly AnyDocument[],
  components: readonly Component[],
): Promise<Translated> {
  const things = documents.flatMap((each): readonly TranslatedThing[] =>
    each.kind === "translation"
      ? [each.of]
      : each.kind === "plan"
        ? [{ kind: "PLAN", slug: each.slug }]
        : each.kind === "component"
          ? [{ kind: "COMPONENT", slug: each.slug }]
          : [],
  );
  if (things.length === 0) return { plans: [], translations: [] };
  const isPlan = things.some(({ kind }) => kind === "PLAN");
  const beside = isPlan ? components.map(({ slug }): TranslatedThing => ({ kind: "COMPONENT", slug })) : [];
  const written = new Set(documents.flatMap(({ kind, slug }) => (kind === "plan" ? [slug] : [])));
  const named = documents.flatMap((each) =>
    each.kind === "translation" && each.of.kind === "PLAN" && !written.has(each.of.slug) ? [each.of.slug] : [],
  );
  const plans =
    named.length === 0 ? [] : await data.plans.drafts([...new Set(named)].map((slug) => ({ publisher, slug })));
  const translations = await data.translations.of(publisher, [...things, ...beside]);
  return {
    plans: plans.flatMap((draft) => (draft === null ? [] : [draft.value])),
    translations: translations.map(({ value }) => value),
  };
}
