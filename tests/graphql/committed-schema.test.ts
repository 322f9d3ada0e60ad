import { readFileSync } from "node:fs";
import { generate } from "@graphql-codegen/cli";
import {
  getIntrospectionQuery,
  graphqlSync,
  isEnumType,
  isInputObjectType,
  isInterfaceType,
  isObjectType,
  printSchema,
} from "graphql";
import { describe, expect, it } from "vitest";
import codegen from "../../codegen.config.js";
import { createSchema } from "../../src/graphql/schema.js";

const schema = createSchema();
const own = Object.values(schema.getTypeMap()).filter(({ name }) => !name.startsWith("__"));

describe("the schema", () => {
  it("is the committed schema.graphql (npx vitest run tests/graphql/committed-schema.test.ts -u writes it)", async () => {
    await expect(`${printSchema(schema)}\n`).toMatchFileSnapshot("../../schema.graphql");
  });

  it("gives the committed types of resolvers (npx graphql-codegen --config codegen.config.ts writes them)", async () => {
    const files: unknown = await generate({ ...codegen, cwd: process.cwd(), silent: true }, false);
    if (!Array.isArray(files)) throw new Error("expected files");
    const [file] = files as { filename: string; content: string }[];
    expect(file?.content).toBe(readFileSync("src/graphql/generated/resolver-types.ts", "utf8"));
  });

  it("describes every type, field, argument and value", () => {
    const missing = own.flatMap((type) => {
      const members = [
        ...(isObjectType(type) || isInterfaceType(type) || isInputObjectType(type)
          ? Object.values(type.getFields())
          : []),
        ...(isEnumType(type) ? type.getValues() : []),
      ];
      return [
        ...(type.description ? [] : [type.name]),
        ...members.flatMap((member) => {
          const args = "args" in member ? member.args : [];
          return [
            ...(member.description ? [] : [`${type.name}.${member.name}`]),
            ...args.filter((arg) => !arg.description).map((arg) => `${type.name}.${member.name}(${arg.name})`),
          ];
        }),
      ];
    });
    expect(missing.filter((name) => !["String", "Int", "Float", "Boolean", "ID"].includes(name))).toEqual([]);
  });

  it("has no list that may hold nulls", () => {
    const nullable = own.flatMap((type) =>
      isObjectType(type) || isInterfaceType(type) || isInputObjectType(type)
        ? Object.values(type.getFields())
            .filter((field) => /\[[^\]!]+\]/.test(String(field.type)))
            .map((field) => `${type.name}.${field.name}`)
        : [],
    );
    expect(nullable).toEqual([]);
  });

  it("answers introspection", () => {
    expect(graphqlSync({ schema, source: getIntrospectionQuery() }).errors).toBeUndefined();
  });
});
