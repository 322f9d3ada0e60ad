// @ts-nocheck
import type {
  SqlDriverAdapter,
  SqlDriverAdapterFactory,
  SqlQuery,
  SqlQueryable,
  Transaction,
} from "@prisma/driver-adapter-utils";
import type { OnStatement } from "./opened-database.js";

/** One of the two adapters sends these as statements, the other does not: nobody hears them. */
const frame = /^(BEGIN|COMMIT|ROLLBACK)$/;

/** The same adapter; `onStatement` hears every statement, inside and outside of transactions. */
export function watchStatements(factory: SqlDriverAdapterFactory, onStatement: OnStatement): SqlDriverAdapterFactory {
  return {
    provider: factory.provider,
    adapterName: factory.adapterName,
    connect: async () => watchAdapter(await factory.connect(), onStatement),
  };
}

function watchAdapter(adapter: SqlDriverAdapter, onStatement: OnStatement): SqlDriverAdapter {
  return {
    ...watchQueries(adapter, onStatement),
    executeScript: (script) => adapter.executeScript(script),
    startTransaction: async (level) => watchTransaction(await adapter.startTransaction(level), onStatement),
    getConnectionInfo: () => adapter.getConnectionInfo?.() ?? { supportsRelationJoins: true },
    dispose: () => adapter.dispose(),
  };
}

function watchTransaction(transaction: Transaction, onStatement: OnStatement): Transaction {
  return {
    ...watchQueries(transaction, onStatement),
    options: transaction.options,
    commit: () => transaction.commit(),
    rollback: () => transaction.rollback(),
  };
}

function watchQueries(queryable: SqlQueryable, onStatement: OnStatement): SqlQueryable {
  const heard = (query: SqlQuery): SqlQuery => {
    if (!frame.test(query.sql)) onStatement(query.sql, query.args);
    return query;
  };
  return {
    provider: queryable.provider,
    adapterName: queryable.adapterName,
    queryRaw: (query) => queryable.queryRaw(heard(query)),
    executeRaw: (query) => queryable.executeRaw(heard(query)),
  };
}
