import { graphql, GraphQLError } from "graphql";
import { randomUUID } from "node:crypto";
import { createContext } from "../../graphql/context.js";
import { createSchema } from "../../graphql/schema.js";
import { EmbeddedDatabaseBusy } from "../../persistence/errors.js";
import { readEnvironment, type Environment } from "../setup/environment.js";
import { openDatabase, type OpenDatabase } from "../setup/open-database.js";
import { openLog } from "../setup/open-log.js";
import { CommandFailed, exitCodes, usage } from "./outcome.js";
import { failureOf, type Service } from "./service.js";

/** The database that the environment names, through the same schema, as the program itself: who has the database may do all. */
export async function openLocal(): Promise<Service> {
  const environment = readEnvironment();
  if (!environment.ok) throw usage(...environment.faults);
  const database = await opened(environment.value);
  const schema = createSchema();
  const requestId = randomUUID();
  return {
    ask: async <Answer, Variables>(operation: object, variables: Variables) => {
      const contextValue = createContext(database.deps, requestId, { kind: "PROGRAM", name: "command line" });
      const source = operation.toString();
      const variableValues = variables as Readonly<Record<string, unknown>>;
      const { data, errors = [] } = await graphql({ schema, source, contextValue, variableValues });
      const faults = errors.flatMap(({ originalError }) => originalError ?? []);
      for (const fault of faults) if (!(fault instanceof GraphQLError)) throw fault;
      if (errors.length > 0) throw failureOf(errors);
      // Through JSON, as it would come over HTTP: resolvers hand out dates.
      return JSON.parse(JSON.stringify(data)) as Answer;
    },
    close: () => database.close(),
  };
}

async function opened(environment: Environment): Promise<OpenDatabase> {
  try {
    return await openDatabase(environment, openLog("warn"));
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    if (error instanceof EmbeddedDatabaseBusy) {
      throw new CommandFailed(exitCodes.unreachable, "DATABASE_IN_USE", [
        `The database in ${environment.dataDir} is in use (${error.holder}). Stop the service first, or leave out --local to use the service.`,
      ]);
    }
    throw new CommandFailed(exitCodes.unreachable, "NO_DATABASE", `The database cannot be opened: ${messageOf(error)}`);
  }
}

/** A connection that fails at several addresses says so in parts. */
const messageOf = (error: Error): string =>
  error instanceof AggregateError && error.errors.length > 0
    ? error.errors.map((each: unknown) => (each instanceof Error ? each.message : String(each))).join("; ")
    : error.message;
