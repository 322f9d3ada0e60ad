import type { Data } from "../data.js";
import { discardDraft } from "./discard-draft.js";
import { draftPage } from "./draft-page.js";
import { draftTexts } from "./draft-texts.js";
import { draftsNaming } from "./drafts-naming.js";
import { draftsTitled } from "./drafts-titled.js";
import { draftVersions } from "./draft-versions.js";
import type { Session } from "../database/session.js";

/** What plans and components have in common as drafts. */
export function draftData(session: Session): Data["drafts"] {
  return {
    page: (filter, request) => draftPage(session.db, filter, request),
    versions: (drafts) => draftVersions(session.db, drafts),
    texts: (drafts) => draftTexts(session.db, drafts),
    titled: (publisher, titles) => draftsTitled(session.db, publisher, titles),
    naming: (draft, most) => draftsNaming(session.db, draft, most),
    discard: (draft, expectedVersion) => session.transaction((db) => discardDraft(db, draft, expectedVersion)),
  };
}
