import { Kind, type DocumentNode, type GraphQLError, type GraphQLSchema } from "graphql";
import { coded, codedWithoutSuggestion } from "../errors.js";
import { compiledOperations, type CompiledDocument } from "./compiled-operations.js";
import { hashOf, openDocumentStore, type DocumentStore } from "./document-store.js";
import type { EngineOptions } from "./engine-options.js";
import { refusal, type Refusal } from "./refusal.js";

/** The documents that requests mean, by text and by hash, read and checked. */
export interface Operations extends DocumentStore {
  compile(source: string): CompiledDocument;
  /** Why a document is not run. It must have faults. */
  faultsOf(document: CompiledDocument | null): Refusal;
  /** Why variables are refused. */
  wrongVariables(errors: readonly GraphQLError[]): Refusal;
}

/** @throws where the operator registered a document that is no good */
export function openOperations(schema: GraphQLSchema, { introspection, registered }: EngineOptions): Operations {
  const compiled = compiledOperations(schema, { introspection });
  const shown = introspection ? coded : codedWithoutSuggestion;
  for (const source of registered ?? []) checkRegistered(source, compiled.compile(source));
  const documents = openDocumentStore(
    registered ? new Map(registered.map((source) => [hashOf(source), source])) : null,
  );
  return {
    find: documents.find,
    compile: compiled.compile,
    faultsOf: (document) => {
      if (document === null || document.ok) throw new Error("a document without faults is refused");
      const general = document.stage === "PARSE" ? "GRAPHQL_PARSE_FAILED" : "GRAPHQL_VALIDATION_FAILED";
      const codeOf = (error: GraphQLError) => ("limit" in error.extensions ? "TOO_LARGE" : general);
      return { code: general, errors: document.errors.map((error) => shown(error, codeOf(error))), headers: {} };
    },
    wrongVariables: (errors) => {
      const code = "BAD_USER_INPUT";
      return { code, errors: errors.map((error) => shown(error, code)), headers: {} };
    },
  };
}

export const emptyDocument: DocumentNode = { kind: Kind.DOCUMENT, definitions: [] };

/** A registered document that is no good is a fault of the operator's: the service does not start with it. */
function checkRegistered(source: string, document: CompiledDocument): void {
  if (document.ok) return;
  const faults = document.errors.map(({ message }) => message).join(" ");
  throw new Error(`a registered document is refused: ${faults} It begins with: ${source.slice(0, 100)}`);
}

/** Why none of so many operations is the one that is meant. */
export const unresolved = (count: number, name: string | undefined): Refusal =>
  refusal(
    "OPERATION_RESOLUTION_FAILURE",
    name !== undefined
      ? `The document has no operation named ${JSON.stringify(name)}.`
      : count === 0
        ? "The document has no operation."
        : "The document has several operations. Choose one with `operationName`.",
  );
