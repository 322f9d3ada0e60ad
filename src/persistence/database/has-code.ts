/** Whether an error of the system is the one of that code, such as ENOENT. */
export const hasCode = (error: unknown, ...codes: readonly string[]): boolean =>
  error instanceof Error && "code" in error && typeof error.code === "string" && codes.includes(error.code);
