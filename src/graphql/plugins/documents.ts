import type { ApolloServerPlugin } from "@apollo/server";
import { Kind, type DocumentNode, type GraphQLError, type GraphQLSchema } from "graphql";
import { inStage } from "../../services/answer-stage.js";
import { Refused, type CallContext } from "../server/call.js";
import { compiledOperations, keptDocuments, type CompiledDocument } from "../server/compiled-operations.js";
import type { EngineOptions } from "../server/engine-options.js";
import { coded, codedWithoutSuggestion } from "../errors.js";
import { hashOf, openDocumentStore } from "../server/document-store.js";
import { refusal, type Refusal } from "../server/refusal.js";

/**
 * From the hash of a document to its text, and from its text to what is executed: read, checked and compiled once, as long as it is
 * asked for. Apollo Server reads and validates only what comes without a document, so it does neither.
 */
export function documentsPlugin(
  schema: GraphQLSchema,
  { introspection, registered }: EngineOptions,
): ApolloServerPlugin<CallContext> {
  const compiled = compiledOperations(schema, { introspection });
  const shown = introspection ? coded : codedWithoutSuggestion;
  for (const source of registered ?? []) checkRegistered(source, compiled.compile(source));
  const documents = openDocumentStore(
    registered ? new Map(registered.map((source) => [hashOf(source), source])) : null,
  );
  return {
    requestDidStart: ({ request, contextValue: { call } }) => {
      const found = documents.find({
        source: request.query ?? null,
        documentId: call.documentId ?? null,
        extensions: request.extensions ?? {},
      });
      // The hash was understood here: Apollo Server would look for it in a store of its own, of which there is none.
      delete request.extensions?.["persistedQuery"];
      request.query = "source" in found ? found.source : noDocument;
      if (request.operationName === "") delete request.operationName;
      let document: CompiledDocument | null = null;
      return Promise.resolve({
        didResolveSource: (context) => {
          if ("source" in found) document = inStage(call.asker.deps, "compile", () => compiled.compile(found.source));
          // What is refused is refused in `didResolveOperation`; until then there is nothing to run.
          Object.assign(context, { document: document?.ok === true ? document.document : nothing });
          return Promise.resolve();
        },
        didResolveOperation: ({ operation: node }) => {
          if (!("source" in found)) throw new Refused(found);
          if (document?.ok !== true) throw new Refused(faultsOf(document, shown));
          const operation = document.operations.find((each) => each.node === node);
          if (operation === undefined) throw new Refused(unresolved(document.operations.length, request.operationName));
          const { source, isNamed, isRegistered } = found;
          const mayBeKept = source.length <= keptDocuments.maxEntrySize;
          call.chosen = { operation, isNamed, isRegistered, mayBeKept };
          return Promise.resolve();
        },
        responseForOperation: () => {
          // No plugin refused it: from now on its hash will do.
          if ("source" in found && call.chosen?.operation.kind === "query") found.keep();
          return Promise.resolve(null);
        },
      });
    },
  };
}

/** Apollo Server looks at no request without a text. Nothing is read of this one. */
const noDocument = "#";

const nothing: DocumentNode = { kind: Kind.DOCUMENT, definitions: [] };

/** A registered document that is no good is a fault of the operator's: the service does not start with it. */
function checkRegistered(source: string, document: CompiledDocument): void {
  if (document.ok) return;
  const faults = document.errors.map(({ message }) => message).join(" ");
  throw new Error(`a registered document is refused: ${faults} It begins with: ${source.slice(0, 100)}`);
}

function faultsOf(document: CompiledDocument | null, shown: typeof coded): Refusal {
  if (document === null || document.ok) throw new Error("a document without faults is refused");
  const general = document.stage === "PARSE" ? "GRAPHQL_PARSE_FAILED" : "GRAPHQL_VALIDATION_FAILED";
  const codeOf = (error: GraphQLError) => ("limit" in error.extensions ? "TOO_LARGE" : general);
  return { code: general, errors: document.errors.map((error) => shown(error, codeOf(error))), headers: {} };
}

/** Why none of so many operations is the one that is meant. */
const unresolved = (count: number, name: string | undefined): Refusal =>
  refusal(
    "OPERATION_RESOLUTION_FAILURE",
    name !== undefined
      ? `The document has no operation named ${JSON.stringify(name)}.`
      : count === 0
        ? "The document has no operation."
        : "The document has several operations. Choose one with `operationName`.",
  );
