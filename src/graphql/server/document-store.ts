import { createHash } from "node:crypto";
import type { Refusal } from "./refusal.js";
import { BoundedCache } from "../../domain/bounded-cache.js";
import { refusal } from "./refusal.js";

/** How a request says which document it means. */
export interface RequestedDocument {
  /** The document; null: it is only named. */
  readonly source: string | null;
  /** Names the document by the hash of its text, if it is a good one; null: it does not. */
  readonly documentId: unknown;
  readonly extensions: Readonly<Record<string, unknown>>;
}

/** Documents of the operator, the only ones that are run where there are any: texts by their hash. */
type RegisteredDocuments = ReadonlyMap<string, string>;

/** The document that a request means. */
interface FoundDocument {
  readonly source: string;
  /** The request names it by its hash: its address means the same for ever. */
  readonly isNamed: boolean;
  /** It is one of the operator's. */
  readonly isRegistered: boolean;
  /** To be called once it is known to be a good query: from then on its hash will do. */
  keep(): void;
}

/** SHA-256 of the text in UTF-8, 64 lower-case hexadecimal digits. */
export const hashOf = (source: string): string => createHash("sha256").update(source, "utf8").digest("hex");

/** Documents that callers left here, the ones asked for last. */
const keptByHash = { max: 2_000, maxSize: 4_000_000, maxEntrySize: 64_000 };

export interface DocumentStore {
  /** The document itself or the one of the hash that the request names; or why there is none. */
  find(request: RequestedDocument): FoundDocument | Refusal;
}

/**
 * Documents by their hash: those of the operator and, without any, those that callers have sent with theirs. By `documentId` (the
 * appendix on persisted documents of GraphQL over HTTP), or by `extensions.persistedQuery`, which many clients speak.
 */
export function openDocumentStore(registered: RegisteredDocuments | null): DocumentStore {
  const kept = new BoundedCache<string>("graphql-hashes", keptByHash);
  const byHash = (hash: string): string | undefined => (registered ?? kept).get(hash);
  return {
    find: (request) => {
      const named = namedHash(request);
      if (named !== null && typeof named !== "string") return named;
      const { source } = request;
      if (source === null) {
        if (named === null) return refusal("BAD_REQUEST", "Send a GraphQL document as `query`, or its `documentId`.");
        const found = byHash(named);
        if (found === undefined) return request.documentId === null ? unknownHash : unknownId;
        return { source: found, isNamed: true, isRegistered: registered !== null, keep: () => undefined };
      }
      if (named === null && registered === null) {
        return { source, isNamed: false, isRegistered: false, keep: () => undefined };
      }
      const hash = hashOf(source);
      if (named !== null && named !== hash) {
        return refusal("BAD_REQUEST", "The hash does not match `query`: use the SHA-256 of its text in UTF-8.");
      }
      if (registered !== null && !registered.has(hash)) return notRegistered;
      const keep = (): void => {
        if (registered === null) kept.set(hash, source, { size: source.length });
      };
      return { source, isNamed: named !== null, isRegistered: registered !== null, keep };
    },
  };
}

/** The hash that a request names its document by; null: it names none. */
function namedHash({ documentId, extensions }: RequestedDocument): string | Refusal | null {
  if (documentId !== null) {
    const [, hash] = (typeof documentId === "string" ? /^sha256:([0-9a-f]{64})$/.exec(documentId) : null) ?? [];
    return hash ?? refusal("BAD_REQUEST", "`documentId` must be sha256: and 64 lower-case hexadecimal digits.");
  }
  const named = extensions["persistedQuery"];
  if (named === undefined || named === null) return null;
  const { version, sha256Hash } = named as { readonly version?: unknown; readonly sha256Hash?: unknown };
  if (version === 1 && typeof sha256Hash === "string" && /^[0-9a-f]{64}$/.test(sha256Hash)) return sha256Hash;
  return refusal(
    "BAD_REQUEST",
    "`extensions.persistedQuery` must have the `version` 1 and a `sha256Hash` of 64 lower-case hexadecimal digits.",
  );
}

const unknownId = refusal(
  "DOCUMENT_NOT_FOUND",
  "No document of this `documentId` is known. Send it as `query` as well.",
);

/** Clients look for this very message, and then send the document. */
const unknownHash = refusal("PERSISTED_QUERY_NOT_FOUND", "PersistedQueryNotFound");

const notRegistered = refusal(
  "DOCUMENT_NOT_REGISTERED",
  "This service executes only documents that its operator has registered.",
);
