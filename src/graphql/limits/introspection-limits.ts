import { GraphQLError, type ASTVisitor, type FieldNode, type ValidationContext } from "graphql";
import { introspectionLimits, type IntrospectionMeter } from "./introspection-size.js";

/**
 * Refuses documents that ask for more of the schema than anybody reads. What the standard query asks is never too much, however large
 * the schema is. To be asked last: it needs a document that is valid.
 */
export const introspectionLimitsRule =
  (meter: IntrospectionMeter) =>
  (context: ValidationContext): ASTVisitor => {
    const asked: FieldNode[] = [];
    return {
      Field: (field) => {
        if (isIntrospection(field) && !meter.isNarrow(field)) asked.push(field);
      },
      Document: {
        leave: () => {
          for (const what of ["entries", "bytes"] as const) {
            const limit = introspectionLimits[what];
            const size = asked.map((field) => meter.sizeOf(field)[what]).reduce((a, b) => a + b, 0);
            if (size <= limit) continue;
            const message =
              `What is asked about the schema is answered with more than ${limit} ${what}.` +
              " Ask for less of it at a time, or send the standard introspection query, which is always answered.";
            context.reportError(
              new GraphQLError(message, { nodes: asked, extensions: { what: `introspection ${what}`, limit } }),
            );
            return;
          }
        },
      },
    };
  };

const isIntrospection = ({ name }: FieldNode): boolean => name.value === "__schema" || name.value === "__type";
