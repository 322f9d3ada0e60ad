// @ts-nocheck
import type { Data } from "./data.js";
import { discardDraft } from "./discard-draft.js";
import { draftPage } from "./draft-page.js";
import type { Session } from "./session.js";

/** What plans and components have in common as drafts. */
export function draftData(session: Session): Data["drafts"] {
  return {
    page: (filter, request) => draftPage(session.db, filter, request),
    discard: (kind, name, expectedVersion) =>
      session.transaction((db) => discardDraft(db, kind, name, expectedVersion)),
  };
}
