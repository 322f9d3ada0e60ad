// @ts-nocheck
import { makeExecutableSchema } from "@graphql-tools/schema";
import type { GraphQLSchema } from "graphql";
import type { Context } from "./context.js";
import { resolvers } from "./resolvers/resolvers.js";
import { readTypeDefs } from "./type-defs.js";

/** The written schema with its resolvers. Throws where the two do not fit. */
export const createSchema = (): GraphQLSchema =>
  makeExecutableSchema<Context>({
    typeDefs: [...readTypeDefs()],
    resolvers,
    resolverValidationOptions: { requireResolversToMatchSchema: "error", requireResolversForResolveType: "error" },
  });
