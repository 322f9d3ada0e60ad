import fc from "fast-check";
import {
  getNamedType,
  isAbstractType,
  isCompositeType,
  isObjectType,
  isRequiredArgument,
  type GraphQLArgument,
  type GraphQLField,
  type GraphQLSchema,
} from "graphql";

/** Values to choose from for the arguments of a field, as they are written in a document. By name. */
export type ArgumentValues = Readonly<Record<string, readonly string[]>>;

/**
 * Valid queries over a schema, of at most so many levels. Fields whose required arguments have no values to choose from are left
 * out; others are given now and then. Fields of one name may not fit together over fragments: whoever asks validates first.
 */
export function arbitraryQuery(schema: GraphQLSchema, values: ArgumentValues, levels: number): fc.Arbitrary<string> {
  const root = schema.getQueryType();
  if (!root) throw new Error("a schema without queries");
  return selection(root.name, levels, true).map((text) => `query ${text}`);

  function selection(typeName: string, left: number, isRoot: boolean): fc.Arbitrary<string> {
    const type = schema.getType(typeName);
    if (isAbstractType(type)) {
      const shapes = schema
        .getPossibleTypes(type)
        .map(({ name }) => selection(name, left, false).map((text) => `... on ${name} ${text}`));
      return fc
        .subarray(shapes, { minLength: 1, maxLength: Math.min(2, shapes.length) })
        .chain((chosen) => fc.tuple(...chosen).map((parts) => `{ __typename ${parts.join(" ")} }`));
    }
    if (!isObjectType(type)) throw new Error(`${typeName} has no fields`);
    const fields = Object.values(type.getFields()).filter((field) => canBeAsked(field, left));
    return fc
      .subarray(fields, { minLength: Math.min(1, fields.length), maxLength: Math.min(isRoot ? 2 : 5, fields.length) })
      .chain((chosen) =>
        fc.tuple(...chosen.map((field) => asked(field, left))).map((parts) => `{ __typename ${parts.join(" ")} }`),
      );
  }

  function asked(field: GraphQLField<unknown, unknown>, left: number): fc.Arbitrary<string> {
    const type = getNamedType(field.type);
    const below = isCompositeType(type) ? selection(type.name, left - 1, false) : fc.constant("");
    return fc.tuple(argumentsOf(field.args), below).map(([args, set]) => `${field.name}${args} ${set}`);
  }

  function argumentsOf(args: readonly GraphQLArgument[]): fc.Arbitrary<string> {
    const known = args.filter(({ name }) => values[name] !== undefined);
    const each = known.map((argument) => {
      const written = fc.constantFrom(...(values[argument.name] ?? [])).map((value) => `${argument.name}: ${value}`);
      return isRequiredArgument(argument) ? written : fc.option(written, { nil: "" });
    });
    return fc.tuple(...each).map((parts) => {
      const given = parts.filter((part) => part !== "");
      return given.length === 0 ? "" : `(${given.join(", ")})`;
    });
  }

  function canBeAsked(field: GraphQLField<unknown, unknown>, left: number): boolean {
    const answerable = field.args.every(
      (argument) => !isRequiredArgument(argument) || values[argument.name] !== undefined,
    );
    return answerable && (left > 0 || !isCompositeType(getNamedType(field.type)));
  }
}
