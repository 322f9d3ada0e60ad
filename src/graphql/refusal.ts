/** The answer to a request that never reached the engine: the shape of any GraphQL error, so that clients can read it. */
export const refusal = (code: string, message: string) => ({ errors: [{ message, extensions: { code } }] });
