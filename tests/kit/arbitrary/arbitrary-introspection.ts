import fc from "fast-check";
import {
  __Schema,
  __Type,
  getNamedType,
  isObjectType,
  type GraphQLField,
  type GraphQLObjectType,
  type GraphQLSchema,
} from "graphql";

/**
 * Questions about a schema, of at most so many levels, with aliases and with fragments. Some are refused by the specification's rules or
 * by the limits of a document: whoever asks says which it wants.
 */
export function arbitraryIntrospection(schema: GraphQLSchema, levels: number): fc.Arbitrary<string> {
  const roots = fc.oneof(
    { weight: 3, arbitrary: selection(__Schema, levels).map((set) => `__schema ${set}`) },
    {
      weight: 2,
      arbitrary: fc
        .tuple(fc.constantFrom(...Object.keys(schema.getTypeMap()), "NoSuchType"), selection(__Type, levels))
        .map(([name, set]) => `__type(name: "${name}") ${set}`),
    },
  );
  return fc
    .array(roots, { minLength: 1, maxLength: 3 })
    .map((chosen) => `{ ${chosen.map((root, at) => `r${at}: ${root}`).join(" ")} }`);
}

function selection(type: GraphQLObjectType, left: number): fc.Arbitrary<string> {
  const fields = Object.values(type.getFields()).filter((field) => left > 1 || !isObjectType(getNamedType(field.type)));
  // Several names for one field, so that some answers are wide.
  const chosen = fc.array(fc.constantFrom(...fields), { minLength: 1, maxLength: 4 });
  return chosen
    .chain((each) => fc.tuple(...each.map((field, at) => written(field, at, left)), fc.boolean()))
    .map((parts) => {
      const inside = parts.slice(0, -1).join(" ");
      return parts.at(-1) === true ? `{ ... on ${type.name} { ${inside} } }` : `{ __typename ${inside} }`;
    });
}

function written(field: GraphQLField<unknown, unknown>, at: number, left: number): fc.Arbitrary<string> {
  const type = getNamedType(field.type);
  const takesDeprecated = field.args.some(({ name }) => name === "includeDeprecated");
  const below = isObjectType(type) ? selection(type, left - 1) : fc.constant("");
  return fc
    .tuple(below, fc.boolean())
    .map(([set, all]) => `a${at}: ${field.name}${takesDeprecated && all ? "(includeDeprecated: true)" : ""} ${set}`);
}
