import type { AroundStatement } from "../../persistence/database/opened-database.js";
import type { AroundStage } from "../../services/answer-stage.js";

export type AroundJob = <T>(name: string, work: () => Promise<T>) => Promise<T>;

/** Somebody who is told of what the process spends its time on: figures, traces. It changes nothing. */
export interface Observer {
  readonly aroundStage: AroundStage;
  readonly aroundStatement: AroundStatement;
  readonly aroundJob: AroundJob;
}

/** All of them around the same work, the first outermost; null: nobody watches, and nothing is spent on it. */
export function combineObservers(observers: readonly Observer[]): Observer | null {
  return observers.reduceRight<Observer | null>(
    (inner, outer) =>
      inner === null
        ? outer
        : {
            aroundStage: (stage, work) => outer.aroundStage(stage, () => inner.aroundStage(stage, work)),
            aroundStatement: (sql, work) => outer.aroundStatement(sql, () => inner.aroundStatement(sql, work)),
            aroundJob: (name, work) => outer.aroundJob(name, () => inner.aroundJob(name, work)),
          },
    null,
  );
}

/** Does the work and says how it ended, also where it is a promise. */
export function whenDone<T>(work: () => T, done: (error: unknown) => void): T {
  let result: T;
  try {
    result = work();
  } catch (error) {
    done(error);
    throw error;
  }
  if (result instanceof Promise) {
    result.then(() => done(null), done);
  } else {
    done(null);
  }
  return result;
}
