// @ts-nocheck
import type { Prisma, PrismaClient } from "./generated/client.js";

/** A client, or a transaction of one. */
export type Db = Prisma.TransactionClient;

/** Where reads and writes go. `transaction` begins one, or joins the one that is already open. */
export interface Session {
  readonly db: Db;
  transaction<T>(work: (db: Db) => Promise<T>): Promise<T>;
}

export const clientSession = (client: PrismaClient): Session => ({
  db: client,
  transaction: (work) => client.$transaction(work),
});

export const transactionSession = (db: Db): Session => ({ db, transaction: (work) => work(db) });
