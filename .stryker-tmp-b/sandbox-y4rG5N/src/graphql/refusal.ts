/** The answer to a request that never reached the engine: the shape of any GraphQL error, so that clients can read it. */
// @ts-nocheck

export const refusal = (code: string, message: string) => ({ errors: [{ message, extensions: { code } }] });
