import {
  Kind,
  valueFromASTUntyped,
  type DocumentNode,
  type FieldNode,
  type OperationDefinitionNode,
  type SelectionSetNode,
} from "graphql";
import type { NamedPlan } from "../../services/usage/request-counts.js";

/** As many as aliases are allowed. */
const mostNamed = 30;

/** The plans that an operation asks for by name (`plan`, with its publisher and its slug), found once; their names may be variables. */
export function plansNamedIn(
  document: DocumentNode,
  operation: OperationDefinitionNode,
): (variables: Readonly<Record<string, unknown>>) => readonly NamedPlan[] {
  const fields = rootFields(document, operation.selectionSet).filter(({ name }) => name.value === "plan");
  if (operation.operation !== "query" || fields.length === 0) return () => none;
  const named = fields.slice(0, mostNamed);
  return (variables) => {
    const found = new Map<string, NamedPlan>();
    for (const field of named) {
      const [publisher, plan] = ["publisher", "slug"].map((name) => argumentOf(field, name, variables));
      if (typeof publisher === "string" && typeof plan === "string")
        found.set(`${publisher}/${plan}`, { publisher, plan });
    }
    return [...found.values()];
  };
}

const none: readonly NamedPlan[] = [];

function argumentOf(field: FieldNode, wanted: string, variables: Readonly<Record<string, unknown>>): unknown {
  const found = field.arguments?.find(({ name }) => name.value === wanted);
  return found === undefined ? undefined : valueFromASTUntyped(found.value, variables);
}

/** Each fragment once, however often it is spread. */
function rootFields(
  document: DocumentNode,
  { selections }: SelectionSetNode,
  seen = new Set<string>(),
): readonly FieldNode[] {
  return selections.flatMap((selection) => {
    if (selection.kind === Kind.FIELD) return [selection];
    if (selection.kind === Kind.INLINE_FRAGMENT) return rootFields(document, selection.selectionSet, seen);
    if (seen.has(selection.name.value)) return [];
    seen.add(selection.name.value);
    const fragment = document.definitions.find(
      (definition) => definition.kind === Kind.FRAGMENT_DEFINITION && definition.name.value === selection.name.value,
    );
    return fragment?.kind === Kind.FRAGMENT_DEFINITION ? rootFields(document, fragment.selectionSet, seen) : [];
  });
}
