import pg from "pg";
import { DatabaseUnavailable } from "../errors.js";

type Call = (...given: readonly unknown[]) => unknown;

/**
 * SQLSTATEs with which a server ends a connection or takes none (PostgreSQL 15, appendix A): connection exceptions, who may not log in,
 * no such database, too many connections, and a server that stops, starts or has crashed.
 */
const notServing = /^(08.{3}|28.{3}|3D000|53300|57P0[1-5])$/;

/** The driver's sentences about a connection that is lost or could not be had in time. They have no code. */
const lostConnection =
  /^(Connection terminated|Client has encountered a connection error|Client was closed|timeout exceeded when trying to connect)/;

/** Statements of the pool that could not reach the database, or lost it, reject with DatabaseUnavailable, and all others with what they did. */
export function translateUnavailable(pool: pg.Pool): void {
  pool.on("connect", (client) => {
    client.query = naming(client.query.bind(client) as Call) as typeof client.query;
  });
  pool.query = naming(pool.query.bind(pool) as Call) as typeof pool.query;
  pool.connect = naming(pool.connect.bind(pool) as Call) as typeof pool.connect;
}

/** Calls with a function to be called come from the pool's own parts, whose promises are named. */
const naming =
  (call: Call): Call =>
  (...given) => {
    const answer = call(...given);
    return answer instanceof Promise ? answer.catch(rejectNamed) : answer;
  };

function rejectNamed(error: unknown): never {
  throw error instanceof Error && isAway(error) ? new DatabaseUnavailable(error.message, { cause: error }) : error;
}

function isAway(error: Error): boolean {
  if (error instanceof pg.DatabaseError) return notServing.test(error.code ?? "");
  return "syscall" in error || lostConnection.test(error.message);
}
