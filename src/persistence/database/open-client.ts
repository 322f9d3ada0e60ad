import type { SqlDriverAdapterFactory } from "@prisma/driver-adapter-utils";
import { PrismaClient } from "../generated/client.js";
import type { OpenOptions } from "./opened-database.js";
import { watchStatements } from "./watch-statements.js";

/** Milliseconds a transaction may wait for its turn and may take. The embedded database runs them one after another. */
export const transactionTimes = { maxWait: 30_000, timeout: 120_000 } as const;

/** The client of every database: watched, with the same times, and errors without the values that were asked with. */
export const openClient = (
  adapter: SqlDriverAdapterFactory,
  watchers: Pick<OpenOptions, "onStatement" | "aroundStatement">,
): PrismaClient =>
  new PrismaClient({
    adapter: watchStatements(adapter, watchers),
    transactionOptions: transactionTimes,
    errorFormat: "minimal",
  });
