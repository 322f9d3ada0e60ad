import type { Prisma, PrismaClient } from "../generated/client.js";
import type { Semaphore } from "./semaphore.js";

/** A client, or a transaction of one. */
export type Db = Prisma.TransactionClient;

/** Where reads and writes go. `transaction` begins one, or joins the one that is already open. */
export interface Session {
  readonly db: Db;
  transaction<T>(work: (db: Db) => Promise<T>, longest?: number): Promise<T>;
}

/** `turns`: how many transactions may be open at a time. Reads need none. */
export const clientSession = (client: PrismaClient, turns: Semaphore): Session => ({
  db: client,
  transaction: (work, longest) =>
    turns(() => client.$transaction(work, longest === undefined ? {} : { timeout: longest })),
});

export const transactionSession = (db: Db): Session => ({ db, transaction: (work) => work(db) });
