// @ts-nocheck
import { GraphQLError, Kind, type SelectionSetNode, type ValidationContext, type ASTVisitor } from "graphql";

/** The most a single document may ask. Beside these, `maxTokens` bounds its length. */
export const documentLimits = { depth: 16, aliases: 30, fields: 2000, tokens: 2000 } as const;

interface Size {
  readonly depth: number;
  readonly aliases: number;
  readonly fields: number;
}

const nothing: Size = { depth: 0, aliases: 0, fields: 0 };

const sum = (a: Size, b: Size): Size => ({
  depth: Math.max(a.depth, b.depth),
  aliases: a.aliases + b.aliases,
  fields: a.fields + b.fields,
});

/**
 * Refuses operations that are too deep, rename too often or select too much, fragments written out in full. Runs before
 * anything is executed. Introspection is not measured; graphql-js bounds it by itself.
 */
export function documentLimitsRule(context: ValidationContext): ASTVisitor {
  const fragments = new Map<string, Size>();

  const sizeOfFragment = (name: string): Size => {
    const known = fragments.get(name);
    if (known !== undefined) return known;
    // Counts as nothing while it is being measured; circles are reported by a rule of the specification.
    fragments.set(name, nothing);
    const fragment = context.getFragment(name);
    const size = fragment ? sizeOf(fragment.selectionSet) : nothing;
    fragments.set(name, size);
    return size;
  };

  const sizeOf = (set: SelectionSetNode): Size =>
    set.selections
      .map((selection): Size => {
        if (selection.kind === Kind.FRAGMENT_SPREAD) return sizeOfFragment(selection.name.value);
        if (selection.kind === Kind.INLINE_FRAGMENT) return sizeOf(selection.selectionSet);
        if (selection.name.value.startsWith("__")) return nothing;
        const inner = selection.selectionSet ? sizeOf(selection.selectionSet) : nothing;
        return {
          depth: inner.depth + 1,
          aliases: inner.aliases + (selection.alias ? 1 : 0),
          fields: inner.fields + 1,
        };
      })
      .reduce(sum, nothing);

  return {
    OperationDefinition(operation) {
      const size = sizeOf(operation.selectionSet);
      for (const what of ["depth", "aliases", "fields"] as const) {
        const limit = documentLimits[what];
        if (size[what] <= limit) continue;
        const words = { depth: "levels of fields", aliases: "aliases", fields: "fields" }[what];
        context.reportError(
          new GraphQLError(
            `This operation has ${size[what]} ${words}. The limit is ${limit}. Ask in several requests.`,
            {
              nodes: operation,
              extensions: { what, size: size[what], limit },
            },
          ),
        );
      }
    },
  };
}
