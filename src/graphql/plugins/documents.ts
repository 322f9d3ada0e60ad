import type { ApolloServerPlugin } from "@apollo/server";
import { inStage } from "../../services/answer-stage.js";
import { Refused, type CallContext } from "../server/call.js";
import { keptDocuments, type CompiledDocument } from "../server/compiled-operations.js";
import { emptyDocument, unresolved, type Operations } from "../server/operations.js";
import { refusal } from "../server/refusal.js";

/**
 * From the hash of a document to its text, and from its text to what is executed: read, checked and compiled once, as long as it is
 * asked for. Apollo Server reads and validates only what comes without a document, so it does neither.
 */
export function documentsPlugin(documents: Operations): ApolloServerPlugin<CallContext> {
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
          if ("source" in found) document = inStage(call.asker.deps, "compile", () => documents.compile(found.source));
          // What is refused is refused in `didResolveOperation`; until then there is nothing to run.
          Object.assign(context, { document: document?.ok === true ? document.document : emptyDocument });
          return Promise.resolve();
        },
        didResolveOperation: ({ operation: node }) => {
          if (!("source" in found)) throw new Refused(found);
          if (document?.ok !== true) throw new Refused(documents.faultsOf(document));
          const operation = document.operations.find((each) => each.node === node);
          if (operation === undefined) throw new Refused(unresolved(document.operations.length, request.operationName));
          if (operation.kind === "subscription") throw new Refused(subscribeElsewhere);
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

const subscribeElsewhere = refusal(
  "GRAPHQL_VALIDATION_FAILED",
  "Send subscriptions to /graphql/stream, with `Accept: text/event-stream`.",
);
