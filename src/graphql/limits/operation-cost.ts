import {
  getArgumentValues,
  getDirectiveValues,
  getNamedType,
  GraphQLError,
  GraphQLIncludeDirective,
  GraphQLSkipDirective,
  isCompositeType,
  isListType,
  isInterfaceType,
  isObjectType,
  getNullableType,
  Kind,
  type DocumentNode,
  type FieldNode,
  type GraphQLField,
  type GraphQLNamedType,
  type GraphQLSchema,
  type OperationDefinitionNode,
  type SelectionNode,
  type SelectionSetNode,
} from "graphql";
import { fragmentsOf } from "./fragments.js";
import { introspectionMeter, type IntrospectionMeter } from "./introspection-size.js";
import { householdCost } from "../../services/answers/household-cost.js";
import {
  argumentWork,
  fieldTimes,
  fieldWork,
  listSizes,
  mutationWork,
  pageSize,
  problemsSize,
  queryWork,
} from "./field-costs.js";

type Variables = Readonly<Record<string, unknown>>;

/** Points, or how they come from variables. */
type Cost = number | ((variables: Variables) => number);

const plus = (a: Cost, b: Cost): Cost =>
  typeof a === "number" && typeof b === "number" ? a + b : (given) => costWith(a, given) + costWith(b, given);

const times = (a: Cost, b: Cost): Cost =>
  typeof a === "number" && typeof b === "number" ? a * b : (given) => costWith(a, given) * costWith(b, given);

/** The points with these variables, which are coerced already. */
export const costWith = (cost: Cost, variables: Variables): number =>
  typeof cost === "number" ? cost : cost(variables);

/**
 * What an operation costs at most, before anything of it is run: a point for every object that it may answer with, lists counted
 * as `listSizes` says and pages as long as they are asked for, and points for what is computed and read. Selections that `@skip`
 * and `@include` leave out cost nothing. Questions about the schema cost what they are answered with. The document must be valid.
 */
export function operationCost(
  schema: GraphQLSchema,
  document: DocumentNode,
  operation: OperationDefinitionNode,
  introspection: IntrospectionMeter = introspectionMeter(schema, document),
): Cost {
  const fragments = fragmentsOf(document);

  const costOfSet = (set: SelectionSetNode, parent: GraphQLNamedType, page: Cost): Cost =>
    set.selections
      .map((selection) => times(isTaken(selection), costOfSelection(selection, parent, page)))
      .reduce(plus, 0);

  const costOfSelection = (selection: SelectionNode, parent: GraphQLNamedType, page: Cost): Cost => {
    if (selection.kind === Kind.FIELD) return costOfField(selection, parent, page);
    if (selection.kind === Kind.INLINE_FRAGMENT) {
      return costOfSet(selection.selectionSet, typeNamed(selection.typeCondition?.name.value) ?? parent, page);
    }
    const fragment = fragments.get(selection.name.value);
    if (fragment === undefined) throw new Error(`a document without its fragment ${selection.name.value}`);
    return costOfSet(fragment.selectionSet, typeNamed(fragment.typeCondition.name.value) ?? parent, page);
  };

  const costOfField = (node: FieldNode, parent: GraphQLNamedType, page: Cost): Cost => {
    const field = isObjectType(parent) || isInterfaceType(parent) ? parent.getFields()[node.name.value] : undefined;
    if (field === undefined) return node.selectionSet === undefined ? 0 : introspection.costOf(node);
    const name = `${parent.name}.${field.name}`;
    const work = workOf(name, parent);
    const type = getNamedType(field.type);
    const often = argumentCost(field, node, fieldTimes[name]);
    const asked = argumentCost(field, node, argumentWork[name] ?? (() => 0));
    const household = takesHousehold(field)
      ? argumentCost(field, node, ({ household: given }) => householdCost(given))
      : 0;
    if (node.selectionSet === undefined || !isCompositeType(type)) return times(often, work);
    const isPaged = field.args.some((argument) => argument.name === "first");
    const below = costOfSet(node.selectionSet, type, isPaged ? argumentCost(field, node, pageSize) : page);
    return times(often, plus(plus(plus(work, asked), household), times(sizeOf(field, name, page), plus(1, below))));
  };

  const typeNamed = (name: string | undefined): GraphQLNamedType | undefined =>
    name === undefined ? undefined : schema.getType(name);

  const workOf = (name: string, parent: GraphQLNamedType): number => {
    const isLook = parent === schema.getQueryType() || parent === schema.getSubscriptionType();
    const root = parent === schema.getMutationType() ? mutationWork : isLook ? queryWork : 0;
    return root + (fieldWork[name] ?? 0);
  };

  const root = schema.getRootType(operation.operation);
  if (!root) throw new Error(`a valid document with a ${operation.operation}`);
  return costOfSet(operation.selectionSet, root, 0);
}

/** Whether a list type is counted; of a single object there is one. */
function sizeOf(field: GraphQLField<unknown, unknown>, name: string, page: Cost): Cost {
  if (!isListType(getNullableType(field.type))) return 1;
  if (field.name === "edges" || name.endsWith("Connection.nodes")) return page;
  if (field.name === "problems") return problemsSize;
  // Where arguments say how often, the list is that long.
  if (name in fieldTimes) return 1;
  const size = listSizes[name];
  if (size === undefined) throw new Error(`nobody says how long ${name} is`);
  return size;
}

const takesHousehold = ({ args }: GraphQLField<unknown, unknown>): boolean =>
  args.some(({ name }) => name === "household");

/** A number that is computed from the arguments of a field: now, if no variable is among them. */
function argumentCost(
  field: GraphQLField<unknown, unknown>,
  node: FieldNode,
  compute: ((args: Variables) => number) | undefined,
): Cost {
  if (compute === undefined) return 1;
  const atOnce = (variables: Variables): number => {
    try {
      return compute(getArgumentValues(field, node, { ...variables }));
    } catch (error) {
      // Such arguments are refused when the field is run, before it does anything.
      if (error instanceof GraphQLError) return 1;
      throw error;
    }
  };
  return JSON.stringify(node.arguments).includes(`"${Kind.VARIABLE}"`) ? atOnce : atOnce({});
}

/** 1, or 0 where a directive leaves the selection out. */
function isTaken(selection: SelectionNode): Cost {
  if (selection.directives === undefined || selection.directives.length === 0) return 1;
  return (variables) => {
    const skip = getDirectiveValues(GraphQLSkipDirective, selection, { ...variables });
    const include = getDirectiveValues(GraphQLIncludeDirective, selection, { ...variables });
    return skip?.["if"] === true || include?.["if"] === false ? 0 : 1;
  };
}
