import { ApolloServer } from "@apollo/server";
import { startStandaloneServer } from "@apollo/server/standalone";
import { readFileSync } from "node:fs";

/**
 * `apollo-server.ts SCHEMA DATA`: Apollo Server as its documentation starts it, on the same schema, whose resolvers are all its
 * own: they hand on what is in the file, under the names the query asks for. It computes nothing and reads no database.
 */
const [schema = "", data = ""] = process.argv.slice(2);
const { plan } = JSON.parse(readFileSync(data, "utf8")) as { readonly plan: unknown };
const server = new ApolloServer({
  typeDefs: readFileSync(schema, "utf8"),
  resolvers: { Query: { plan: () => plan } },
});
const { url } = await startStandaloneServer(server, { listen: { port: 0, host: "127.0.0.1" } });
console.log(url.replace("localhost", "127.0.0.1"));
