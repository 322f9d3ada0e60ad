import type { Deps, OwnedSlug, PublishedRevision } from "../deps.js";
import { findComponents } from "./find-components.js";
import { loadDocuments } from "../drafts/load-documents.js";

/** The newest revision in force that holds a component, with its document; null where there is none. */
export async function findComponentHome(deps: Deps, name: OwnedSlug): Promise<PublishedRevision | null> {
  const [home] = await findComponents(deps, [name]);
  if (!home) return null;
  const [bundle] = await loadDocuments(deps, [home.id]);
  return bundle ? { ...home, bundle } : null;
}
