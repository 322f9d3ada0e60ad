import type {
  SqlDriverAdapter,
  SqlDriverAdapterFactory,
  SqlQuery,
  SqlQueryable,
  Transaction,
} from "@prisma/driver-adapter-utils";
import type { OpenOptions } from "./opened-database.js";

type Watched = <T>(query: SqlQuery, send: () => Promise<T>) => Promise<T>;

/** One of the two adapters sends these as statements, the other does not: nobody hears them. */
const frame = /^(BEGIN|COMMIT|ROLLBACK)$/;

/** The same adapter; whoever watches hears every statement, inside and outside of transactions. Nobody: that adapter itself. */
export function watchStatements(
  factory: SqlDriverAdapterFactory,
  { onStatement, aroundStatement }: Pick<OpenOptions, "onStatement" | "aroundStatement">,
): SqlDriverAdapterFactory {
  if (onStatement === undefined && aroundStatement === undefined) return factory;
  const watched: Watched = (query, send) => {
    if (frame.test(query.sql)) return send();
    onStatement?.(query.sql, query.args);
    return aroundStatement === undefined ? send() : aroundStatement(query.sql, send);
  };
  return {
    provider: factory.provider,
    adapterName: factory.adapterName,
    connect: async () => watchAdapter(await factory.connect(), watched),
  };
}

function watchAdapter(adapter: SqlDriverAdapter, watched: Watched): SqlDriverAdapter {
  return {
    ...watchQueries(adapter, watched),
    executeScript: (script) => adapter.executeScript(script),
    startTransaction: async (level) => watchTransaction(await adapter.startTransaction(level), watched),
    getConnectionInfo: () => adapter.getConnectionInfo?.() ?? { supportsRelationJoins: true },
    dispose: () => adapter.dispose(),
  };
}

function watchTransaction(transaction: Transaction, watched: Watched): Transaction {
  return {
    ...watchQueries(transaction, watched),
    options: transaction.options,
    commit: () => transaction.commit(),
    rollback: () => transaction.rollback(),
  };
}

function watchQueries(queryable: SqlQueryable, watched: Watched): SqlQueryable {
  return {
    provider: queryable.provider,
    adapterName: queryable.adapterName,
    queryRaw: (query) => watched(query, () => queryable.queryRaw(query)),
    executeRaw: (query) => watched(query, () => queryable.executeRaw(query)),
  };
}
