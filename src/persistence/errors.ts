/** Somebody else saved the draft since the caller read it; or it exists, or is gone, against what the caller thought. */
export class StaleDraft extends Error {
  override readonly name = "StaleDraft";

  constructor(
    readonly slug: string,
    /** The version the caller named; null: the caller thought there was none. */
    readonly expected: number | null,
    /** The version in the database; null: there is none. */
    readonly actual: number | null,
  ) {
    super(`the draft ${slug} is at version ${actual ?? "none"}, not ${expected ?? "none"}`);
  }
}

/** A cursor that no page of this list gave out. */
export class BadCursor extends Error {
  override readonly name = "BadCursor";

  constructor() {
    super("the cursor is not from a page of this list");
  }
}

/** A draft or a revision for a publisher that was never saved. */
export class UnknownPublisher extends Error {
  override readonly name = "UnknownPublisher";

  constructor(readonly publisher: string) {
    super(`there is no publisher ${publisher}`);
  }
}

/** Text with a NUL character or half a surrogate pair: no Postgres text can hold it. */
export class UnstorableText extends Error {
  override readonly name = "UnstorableText";

  constructor(readonly path: readonly (string | number)[]) {
    super(`the text at ${path.join(".")} holds a character that cannot be stored`);
  }
}

/** Another process, or this one, has the embedded database open: it has room for one. */
export class EmbeddedDatabaseBusy extends Error {
  override readonly name = "EmbeddedDatabaseBusy";

  constructor(
    readonly lockFile: string,
    readonly holder: string,
  ) {
    super(
      `the embedded database is in use by ${holder}. It has room for one process; stop that one first. ` +
        `If it is surely gone, delete ${lockFile}`,
    );
  }
}

/** Others may read what is in the folder of the embedded database, and this process cannot change that. */
export class FolderNotPrivate extends Error {
  override readonly name = "FolderNotPrivate";

  constructor(
    readonly path: string,
    why: string,
  ) {
    super(`others may read the embedded database: ${path} ${why}`);
  }
}

/** The migrations of the program and of the database do not fit, or one could not be applied. */
export class MigrationError extends Error {
  override readonly name = "MigrationError";

  constructor(
    readonly migration: string,
    why: string,
    options?: ErrorOptions,
  ) {
    super(`migration ${migration}: ${why}`, options);
  }
}

/** The request that asked this is over: its time is up, or whoever asked has gone. */
export class RequestEnded extends Error {
  override readonly name = "RequestEnded";

  constructor() {
    super("the request is over");
  }
}

/** The database could not be reached, or was lost before it answered. What was being written may have been written, or not. */
export class DatabaseUnavailable extends Error {
  override readonly name = "DatabaseUnavailable";

  constructor(why: string, options?: ErrorOptions) {
    super(`the database is away: ${why}`, options);
  }
}
