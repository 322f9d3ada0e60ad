export const notReadyCodes = ["STOPPING", "OVERLOADED", "DATABASE_SILENT", "MIGRATIONS_PENDING"] as const;

/** Why a process should not be sent requests. */
interface NotReady {
  readonly code: (typeof notReadyCodes)[number];
  readonly message: string;
}

/** Whether this process should be sent requests. */
export interface Readiness {
  /** Everything that is wrong; empty where nothing is. Never rejects. */
  check(): Promise<readonly NotReady[]>;
  /** From now on this process is on its way out. */
  leave(): void;
  /** Asks also whether there is too much to do: what, in a sentence; null: there is not. */
  watch(overload: () => string | null): void;
  isLeaving(): boolean;
}

interface ReadinessOptions {
  /** Names of migrations that the database lacks. Rejects where the database does not answer. */
  readonly pendingMigrations: () => Promise<readonly string[]>;
  /** Milliseconds that the database may take. */
  readonly patience?: number;
}

/** What `/readyz` says. The database is asked by one check at a time, so that probes do not queue up before one that is stuck. */
export function createReadiness({ pendingMigrations, patience = 1_000 }: ReadinessOptions): Readiness {
  let leaving = false;
  let overload = (): string | null => null;
  let asking: Promise<readonly NotReady[]> | null = null;
  const askDatabase = (): Promise<readonly NotReady[]> => {
    asking ??= pendingMigrations()
      .then(migrationFaults, (): readonly NotReady[] => [
        { code: "DATABASE_SILENT", message: "The database cannot be reached." },
      ])
      .finally(() => {
        asking = null;
      });
    return asking;
  };
  return {
    check: async () => {
      const tooMuch = overload();
      return [
        ...(leaving ? [{ code: "STOPPING", message: "The process was told to stop." } as const] : []),
        ...(tooMuch === null ? [] : [{ code: "OVERLOADED", message: tooMuch } as const]),
        ...(await within(patience, askDatabase())),
      ];
    },
    leave: () => {
      leaving = true;
    },
    watch: (asked) => {
      overload = asked;
    },
    isLeaving: () => leaving,
  };
}

const migrationFaults = (names: readonly string[]): readonly NotReady[] =>
  names.length === 0
    ? []
    : [
        {
          code: "MIGRATIONS_PENDING",
          message: `The database lacks ${names.join(", ")}. They are applied at the next start.`,
        },
      ];

async function within(patience: number, answer: Promise<readonly NotReady[]>): Promise<readonly NotReady[]> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<readonly NotReady[]>((resolve) => {
    const message = `The database did not answer within ${String(patience)} ms.`;
    timer = setTimeout(() => resolve([{ code: "DATABASE_SILENT", message }]), patience);
  });
  return Promise.race([answer, late]).finally(() => clearTimeout(timer));
}
