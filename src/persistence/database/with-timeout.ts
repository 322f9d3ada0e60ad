/** The same, or an error once it has taken so many milliseconds. What was asked goes on, and nobody waits for it. */
export function withTimeout<T>(asked: Promise<T>, ms: number): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const silence = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`no answer within ${ms} ms`)), ms);
  });
  return Promise.race([asked, silence]).finally(() => clearTimeout(timer));
}
