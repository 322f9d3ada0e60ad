import {
  getIntrospectionQuery,
  graphqlSync,
  isEnumType,
  isInputObjectType,
  isInterfaceType,
  isObjectType,
  printSchema,
  type GraphQLNamedType,
} from "graphql";
import { describe, expect, it } from "vitest";
import { createSchema } from "../../src/graphql/schema.js";
import { readsAsASentence } from "../kit/reads-as-a-sentence.js";

const schema = createSchema();
const own = Object.values(schema.getTypeMap()).filter(({ name }) => !name.startsWith("__"));

interface Described {
  readonly name: string;
  readonly description: string | null | undefined;
}

function membersOf(type: GraphQLNamedType): readonly Described[] {
  if (isEnumType(type)) return type.getValues();
  if (isInputObjectType(type)) return Object.values(type.getFields());
  if (!isObjectType(type) && !isInterfaceType(type)) return [];
  return Object.values(type.getFields()).flatMap((field): readonly Described[] => [
    field,
    ...field.args.map((arg) => ({ name: `${field.name}(${arg.name})`, description: arg.description })),
  ]);
}

describe("the schema", () => {
  it("is the committed schema.graphql (npx vitest run tests/graphql/committed-schema.test.ts --update writes it)", async () => {
    await expect(`${printSchema(schema)}\n`).toMatchFileSnapshot("../../schema.graphql");
  });

  it("describes every type, field, argument and value", () => {
    const described = own.flatMap((type) => [
      { name: type.name, description: type.description },
      ...membersOf(type).map((member) => ({ ...member, name: `${type.name}.${member.name}` })),
    ]);
    const missing = described.filter(({ description }) => !description).map(({ name }) => name);
    expect(described.length).toBeGreaterThan(200);
    expect(missing).toEqual([]);
    expect(described.filter(({ description }) => !readsAsASentence(description ?? ""))).toEqual([]);
  });

  it("has no list that may hold nulls, but for those that answer a list of names in its order", () => {
    const nullable = own.flatMap((type) =>
      isObjectType(type) || isInterfaceType(type) || isInputObjectType(type)
        ? Object.values(type.getFields())
            .filter((field) => /\[[^\]!]+\]/.test(String(field.type)))
            .map((field) => `${type.name}.${field.name}`)
        : [],
    );
    expect(nullable.toSorted()).toEqual(["Query.nodes", "Query.plansBySlug"]);
  });

  it("answers introspection", () => {
    expect(graphqlSync({ schema, source: getIntrospectionQuery() }).errors).toBeUndefined();
  });
});
