import { setImmediate as nextTurn } from "node:timers/promises";
import PgBoss from "pg-boss";
import type { AroundJob } from "../observe/observer.js";
import type { Job } from "../../jobs/jobs.js";
import type { Sql } from "../../persistence/sql/plain-sql.js";
import type { Deps, Log } from "../../services/deps.js";
import { asJob } from "../../services/time-slices.js";

interface JobQueueOptions {
  readonly sql: Sql;
  /** IANA name of the zone the cron fields are read in. */
  readonly zone: string;
  readonly jobs: readonly Job[];
  readonly deps: Deps;
  readonly log: Log;
  /** Told of what runs; left out: nobody. */
  readonly aroundJob?: AroundJob;
  /** Milliseconds that jobs may go on once the queue is closed; then they are given back, to be tried again. */
  readonly patience?: number;
}

export interface JobQueue {
  /** Puts a job in the queue at once; some worker runs it. Rejects with a RangeError for a name that is no job's. */
  enqueue(name: string): Promise<void>;
  /** The same, at most once in so many seconds: what is asked for between runs once, afterwards. */
  enqueueOften(name: string, seconds: number): Promise<void>;
  /** Lets running jobs finish, then stops. */
  close(): Promise<void>;
}

/** The most a job may take before another worker may try it again. */
const expireInMinutes = 30;

/** Schedules every job and works on them. Several workers may run at once: each tick is taken by one of them. */
export async function startJobQueue({
  sql,
  zone,
  jobs,
  deps,
  log,
  aroundJob,
  patience = 20_000,
}: JobQueueOptions): Promise<JobQueue> {
  const statements = watchStatements(sql, log);
  const boss = openBoss(statements.execute, log);
  await boss.start();
  for (const job of jobs) {
    await makeQueue(boss, job);
    await boss.schedule(job.name, job.cron, {}, { tz: zone });
    await boss.work(job.name, { pollingIntervalSeconds: 2 }, async () => {
      const run = (): Promise<object> => job.run(asJob(deps));
      const outcome = await (aroundJob === undefined ? run() : aroundJob(job.name, run));
      log.info({ job: job.name, outcome }, "job done");
    });
  }
  const known = (name: string): string => {
    if (!jobs.some((job) => job.name === name)) throw new RangeError(`there is no job ${name}`);
    return name;
  };
  // null: one is waiting already, which is as good.
  return {
    enqueue: async (name) => void (await boss.send(known(name), {})),
    enqueueOften: async (name, seconds) => void (await boss.sendDebounced(known(name), {}, {}, seconds)),
    close: async () => {
      await boss.stop({ graceful: true, wait: true, timeout: patience });
      await statements.settled();
    },
  };
}

/** Makes the tables of the queue and of every job, which takes an owner of tables, and works on none. */
export async function makeJobTables(sql: Sql, jobs: readonly Job[], log: Log): Promise<void> {
  const statements = watchStatements(sql, log);
  const boss = openBoss(statements.execute, log, { supervise: false, schedule: false });
  await boss.start();
  for (const job of jobs) await makeQueue(boss, job);
  await boss.stop({ graceful: false, wait: true });
  await statements.settled();
}

type Execute = (text: string, values: readonly unknown[]) => Promise<{ rows: unknown[] }>;

interface WatchedStatements {
  readonly execute: Execute;
  /** Once no statement is under way and none follows from the last. */
  settled(): Promise<void>;
}

/** How pg-boss says that jobs are done or failed: by their numbers, and to nobody who waits. */
const endsJobs = /AND id IN \(SELECT UNNEST\(\$2::uuid\[\]\)\)/;

/**
 * pg-boss writes down how a job ended without waiting for it. So what is under way is counted here, for the close to wait for, and one
 * that fails is told of in the log: a rejection that nobody waits for would end the process. The job runs again when its time is over.
 */
function watchStatements(sql: Sql, log: Log): WatchedStatements {
  const running = new Set<Promise<unknown>>();
  const run = async (text: string, values: readonly unknown[]): Promise<{ rows: unknown[] }> => {
    try {
      const { rows } = await sql.query(text, values);
      return { rows: [...rows] };
    } catch (error) {
      if (!endsJobs.test(text)) throw error;
      log.error({ err: error, queue: values[0] }, "the result of a job could not be stored; the job runs again later");
      return { rows: [{ count: "0" }] };
    }
  };
  return {
    execute: (text, values) => {
      const statement = run(text, values);
      running.add(statement);
      const end = (): void => void running.delete(statement);
      statement.then(end, end);
      return statement;
    },
    settled: async () => {
      do {
        await Promise.allSettled(running);
        await nextTurn();
      } while (running.size > 0);
    },
  };
}

function openBoss(
  execute: Execute,
  log: Log,
  options: { readonly supervise?: boolean; readonly schedule?: boolean } = {},
): PgBoss {
  const boss = new PgBoss({ ...options, db: { executeSql: execute } });
  boss.on("error", (error) => log.error({ err: error }, "the job queue failed"));
  return boss;
}

const makeQueue = (boss: PgBoss, { name }: Job): Promise<void> =>
  unlessDeadlocked(() =>
    boss.createQueue(name, { name, policy: "short", retryLimit: 3, retryBackoff: true, expireInMinutes }),
  );

/** Postgres: one of two transactions that waited for each other was ended, so that the other could go on. */
const deadlock = "40P01";
const mostTries = 10;

/**
 * Making a queue makes a table that refers to the table of queues, which two instances that start together on a new database do in
 * each other's way. The one that was ended finds the queue there when it asks again.
 */
async function unlessDeadlocked(work: () => Promise<unknown>): Promise<void> {
  for (let tries = 1; ; tries += 1) {
    try {
      await work();
      return;
    } catch (error) {
      const isDeadlock = error instanceof Error && "code" in error && error.code === deadlock;
      if (!isDeadlock || tries === mostTries) throw error;
    }
  }
}
