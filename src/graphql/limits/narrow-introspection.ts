import { Kind, type FieldNode, type OperationDefinitionNode, type SelectionSetNode } from "graphql";
import { selectedBy, type Fragments } from "./fragments.js";

/** What may be asked of an element: plain members, and others with what may be asked of them. */
interface Shape {
  readonly leaves: readonly string[];
  readonly below: () => Readonly<Record<string, Shape>>;
}

const deprecation = ["isDeprecated", "deprecationReason"] as const;
const noneBelow = (): Readonly<Record<string, Shape>> => ({});

const reference: Shape = {
  leaves: ["kind", "name", "description", "specifiedByURL", "isOneOf"],
  below: () => ({ ofType: reference }),
};
const inputValue: Shape = {
  leaves: ["name", "description", "defaultValue", ...deprecation],
  below: () => ({ type: reference }),
};
const enumValue: Shape = { leaves: ["name", "description", ...deprecation], below: noneBelow };
const field: Shape = { leaves: enumValue.leaves, below: () => ({ args: inputValue, type: reference }) };
const fullType: Shape = {
  leaves: reference.leaves,
  below: () => ({
    ofType: reference,
    fields: field,
    inputFields: inputValue,
    interfaces: reference,
    enumValues: enumValue,
    possibleTypes: reference,
  }),
};
const directive: Shape = {
  leaves: ["name", "description", "isRepeatable", "locations", ...deprecation],
  below: () => ({ args: inputValue }),
};
const schema: Shape = {
  leaves: ["description"],
  below: () => ({
    queryType: reference,
    mutationType: reference,
    subscriptionType: reference,
    types: fullType,
    directives: directive,
  }),
};

/**
 * Whether a field `__schema` asks for nothing beyond what the standard query of introspection asks for, in any of its versions and with
 * any of its options, and under no other names: then its answer is at most that of the standard query.
 */
export const isNarrowIntrospection = (node: FieldNode, fragments: Fragments): boolean =>
  node.name.value === "__schema" && fits(node, schema, fragments);

function fits({ alias, selectionSet }: FieldNode, shape: Shape | null, fragments: Fragments): boolean {
  if (alias !== undefined) return false;
  if (selectionSet === undefined || shape === null) return selectionSet === undefined && shape === null;
  const below = shape.below();
  return fieldsOf(selectionSet, fragments).every((each) => {
    const name = each.name.value;
    const isLeaf = name === "__typename" || shape.leaves.includes(name);
    return isLeaf ? fits(each, null, fragments) : below[name] !== undefined && fits(each, below[name], fragments);
  });
}

/** Fields of a selection, with those of fragments where they are spread. */
function fieldsOf(set: SelectionSetNode, fragments: Fragments): readonly FieldNode[] {
  return set.selections.flatMap((selection) => {
    if (selection.kind === Kind.FIELD) return [selection];
    const inside = selectedBy(selection, fragments);
    return inside ? fieldsOf(inside, fragments) : [];
  });
}

/**
 * A text that two operations share which ask for the same in the same order, whatever they and their fragments are called and
 * however they are laid out; null where it is more than a narrow question about the schema, or depends on variables.
 */
export function narrowQuestion(operation: OperationDefinitionNode, fragments: Fragments): string | null {
  if (operation.operation !== "query" || (operation.variableDefinitions ?? []).length > 0) return null;
  const asked = fieldsOf(operation.selectionSet, fragments);
  const isNarrow = asked.every((node) => isNarrowIntrospection(node, fragments));
  return asked.length > 0 && isNarrow ? writtenOut(operation.selectionSet, fragments) : null;
}

/** null: directives are in it. */
function writtenOut(set: SelectionSetNode, fragments: Fragments): string | null {
  const parts: string[] = [];
  for (const selection of set.selections) {
    if ((selection.directives ?? []).length > 0) return null;
    if (selection.kind !== Kind.FIELD) {
      const inside = selectedBy(selection, fragments);
      const text = inside ? writtenOut(inside, fragments) : "";
      if (text === null) return null;
      parts.push(text);
      continue;
    }
    const below = selection.selectionSet ? writtenOut(selection.selectionSet, fragments) : "";
    if (below === null) return null;
    const given = (selection.arguments ?? []).map(
      ({ name, value }) => `${name.value}:${value.kind === Kind.BOOLEAN ? value.value : ""}`,
    );
    parts.push(
      `${selection.name.value}${given.length > 0 ? `(${given.join(",")})` : ""}${below === "" ? "" : `{${below}}`}`,
    );
  }
  return parts.join(" ");
}
