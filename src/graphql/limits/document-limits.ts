import {
  GraphQLError,
  Kind,
  type ASTVisitor,
  type FieldNode,
  type SelectionNode,
  type SelectionSetNode,
  type ValidationContext,
} from "graphql";

/** The most a single document may ask. Beside these, `tokens` bounds its length. */
export const documentLimits = {
  depth: 16,
  aliases: 30,
  fields: 2000,
  repeats: 100,
  directives: 50,
  operations: 20,
  fragments: 100,
  tokens: 2000,
} as const;

type Measured = Exclude<keyof typeof documentLimits, "tokens" | Whole>;
type Whole = "operations" | "fragments" | "directives";
type Size = Readonly<Record<Measured, number>>;

const words: Readonly<Record<Measured | Whole, string>> = {
  depth: "levels of fields",
  aliases: "aliases",
  fields: "fields",
  repeats: "fields that repeat another",
  operations: "operations",
  fragments: "fragments",
  directives: "directives",
};

const nothing: Size = { depth: 0, aliases: 0, fields: 0, repeats: 0 };

const sum = (a: Size, b: Size): Size => ({
  depth: Math.max(a.depth, b.depth),
  aliases: a.aliases + b.aliases,
  fields: a.fields + b.fields,
  repeats: a.repeats + b.repeats,
});

/**
 * Refuses documents with too many operations, fragments or directives, and operations that are too deep, rename or repeat too often or select
 * too much, fragments written out in full. To be asked before the rules of the specification, of which some take long over such
 * documents. How deep introspection goes is not measured: graphql-js bounds it, and `introspectionLimitsRule` what it answers with.
 */
export function documentLimitsRule(context: ValidationContext): ASTVisitor {
  const fragments = new Map<string, Size>();
  let directives = 0;

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

  const sizeOfSelection = (selection: SelectionNode): Size => {
    if (selection.kind === Kind.FRAGMENT_SPREAD) return sizeOfFragment(selection.name.value);
    if (selection.kind === Kind.INLINE_FRAGMENT) return sizeOf(selection.selectionSet);
    const inner = selection.selectionSet ? sizeOf(selection.selectionSet) : nothing;
    // How deep a question about the schema may be, its own price says: types are wrapped in types.
    const depth = selection.name.value.startsWith("__") ? 0 : inner.depth + 1;
    return { ...sum(inner, { depth: 0, aliases: selection.alias ? 1 : 0, fields: 1, repeats: 0 }), depth };
  };

  const sizeOf = (set: SelectionSetNode): Size =>
    set.selections.map(sizeOfSelection).reduce(sum, { ...nothing, repeats: repeatsIn(set) });

  const report = (what: keyof typeof words, size: number, nodes: NonNullable<GraphQLError["nodes"]>): void => {
    const limit = documentLimits[what];
    if (size <= limit) return;
    const message = `There are ${size} ${words[what]} here. The limit is ${limit}. Use several requests.`;
    context.reportError(new GraphQLError(message, { nodes, extensions: { what, size, limit } }));
  };

  return {
    Document: {
      enter: ({ definitions }) => {
        const operations = definitions.filter(({ kind }) => kind === Kind.OPERATION_DEFINITION);
        const fragmentsHere = definitions.filter(({ kind }) => kind === Kind.FRAGMENT_DEFINITION);
        report("operations", operations.length, operations.slice(0, 1));
        report("fragments", fragmentsHere.length, fragmentsHere.slice(0, 1));
      },
      leave: (document) => report("directives", directives, [document]),
    },
    Directive: () => {
      directives += 1;
    },
    OperationDefinition(operation) {
      const size = sizeOf(operation.selectionSet);
      for (const what of ["depth", "aliases", "fields", "repeats"] as const) report(what, size[what], [operation]);
    },
  };
}

/** Fields of one selection that answer under a name which another has already. Whether they fit together is looked at pair by pair. */
function repeatsIn({ selections }: SelectionSetNode): number {
  const fields = selections.filter((selection): selection is FieldNode => selection.kind === Kind.FIELD);
  return fields.length - new Set(fields.map(({ alias, name }) => (alias ?? name).value)).size;
}
