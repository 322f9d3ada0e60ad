import { makeExecutableSchema } from "@graphql-tools/schema";
import { isObjectType, type GraphQLSchema } from "graphql";
import type { Context } from "./context.js";
import { fieldWork, listSizes } from "./limits/field-costs.js";
import { yieldBetweenFields } from "./server/yield-between-fields.js";
import { resolvers } from "./resolvers/resolvers.js";
import { readTypeDefs } from "./type-defs.js";

/** The written schema with its resolvers, and with what fields cost in their descriptions. Throws where they do not fit. */
export function createSchema(): GraphQLSchema {
  const schema = makeExecutableSchema<Context>({
    typeDefs: [...readTypeDefs()],
    resolvers,
    resolverValidationOptions: { requireResolversToMatchSchema: "error", requireResolversForResolveType: "error" },
  });
  yieldBetweenFields(schema);
  describe(schema, listSizes, (size) => `Priced as ${size} entries.`);
  describe(schema, fieldWork, (points) => `Costs ${points} points.`);
  return schema;
}

function describe(
  schema: GraphQLSchema,
  table: Readonly<Record<string, number>>,
  sentence: (value: number) => string,
): void {
  for (const [name, value] of Object.entries(table)) {
    const [typeName = "", fieldName = ""] = name.split(".");
    const type = schema.getType(typeName);
    const field = isObjectType(type) ? type.getFields()[fieldName] : undefined;
    if (field === undefined) throw new Error(`a cost for ${name}, which is no field`);
    field.description = [field.description, sentence(value)].join(" ");
  }
}
