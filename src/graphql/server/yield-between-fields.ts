import {
  defaultFieldResolver,
  getNamedType,
  isCompositeType,
  isObjectType,
  type GraphQLFieldResolver,
  type GraphQLResolveInfo,
  type GraphQLSchema,
} from "graphql";
import type { SlicedWork } from "../../services/time-slices.js";
import type { Context } from "../context.js";

/** Resolving a field, and writing what was found. */
const stepsOfField = 5;

/** A list of so few is written in one turn. */
const rowsAtOnce = 8;

/**
 * Lets others have their turn between the objects of an answer, and counts what is written of them: however wide a document is, nobody
 * waits until all of it is executed.
 */
export function yieldBetweenFields(schema: GraphQLSchema): void {
  for (const type of Object.values(schema.getTypeMap())) {
    if (!isObjectType(type) || type.name.startsWith("__")) continue;
    for (const field of Object.values(type.getFields())) {
      if (!isCompositeType(getNamedType(field.type))) continue;
      field.resolve = paced((field.resolve ?? defaultFieldResolver) as GraphQLFieldResolver<unknown, Context>);
    }
  }
}

function paced(resolve: GraphQLFieldResolver<unknown, Context>): GraphQLFieldResolver<unknown, Context> {
  return (source, args, context, info) => {
    const { work } = context.deps;
    if (work === undefined) return resolve(source, args, context, info);
    const counted = (found: unknown): unknown => {
      work.step(stepsOfField * (1 + rowsOf(found) * selectionsOf(info)));
      return Array.isArray(found) && found.length > rowsAtOnce ? inTurns(found, work) : found;
    };
    return work.inTurn(() => {
      const found = resolve(source, args, context, info);
      return found instanceof Promise ? found.then(counted) : counted(found);
    });
  };
}

/** Each row as it is while this request has its turn, and then the promise of it: GraphQL completes one before it asks for the next. */
function* inTurns(rows: readonly unknown[], work: SlicedWork): Iterable<unknown> {
  for (const row of rows) yield work.inTurn(() => row);
}

const rowsOf = (found: unknown): number => (Array.isArray(found) ? found.length : 1);

const selectionsOf = ({ fieldNodes }: GraphQLResolveInfo): number =>
  fieldNodes.reduce((sum, { selectionSet }) => sum + (selectionSet?.selections.length ?? 0), 0);
