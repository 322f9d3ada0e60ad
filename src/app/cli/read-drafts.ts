import { namedInDocuments } from "../../imports/documents/named-in-documents.js";
import { readDocuments } from "../../imports/documents/read-documents.js";
import {
  ComponentDraftTextDocument,
  PlanDraftTextDocument,
  type DocumentFormat,
  type DraftKind,
  type PlanDraftTextQuery,
} from "./generated/operations.js";
import type { Service } from "./service.js";

export interface DraftText {
  readonly kind: DraftKind;
  readonly slug: string;
  readonly version: number;
  readonly text: string;
  readonly format: DocumentFormat;
}

export interface DraftsRead {
  /** The plan first; empty where there is no draft of it. */
  readonly drafts: readonly DraftText[];
  /** Components that are drawn on and have no draft. */
  readonly missing: readonly string[];
}

/** The draft of a plan and of every component that it draws on, directly or through another. */
export async function readDrafts(
  service: Service,
  { publisher, slug }: { readonly publisher: string; readonly slug: string },
): Promise<DraftsRead> {
  const { draft } = await service.ask(PlanDraftTextDocument, { publisher, slug });
  if (draft === null) return { drafts: [], missing: [] };
  const drafts = [draftText(draft)];
  const missing: string[] = [];
  const asked = new Set<string>();
  for (let next = componentsOf(drafts); next.length > 0;) {
    next.forEach((name) => asked.add(name));
    const level: DraftText[] = [];
    for (const name of next) {
      const component = (await service.ask(ComponentDraftTextDocument, { publisher, slug: name })).draft;
      if (component === null) missing.push(name);
      else level.push(draftText(component));
    }
    drafts.push(...level);
    next = componentsOf(level).filter((name) => !asked.has(name));
  }
  return { drafts, missing };
}

const draftText = ({ document, kind, slug, version }: NonNullable<PlanDraftTextQuery["draft"]>): DraftText => ({
  ...{ kind, slug, version },
  ...document,
});

const componentsOf = (drafts: readonly DraftText[]): readonly string[] =>
  namedInDocuments(
    drafts.flatMap(({ text, slug }) => readDocuments(text, slug).documents.map(({ document }) => document)),
  ).components;
