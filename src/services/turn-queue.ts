interface Waiting {
  readonly go: () => void;
  readonly fail: (why: unknown) => void;
}

/**
 * Many short computations of one request, such as the fields of a long list. While the request has its turn, each runs at once. Those that
 * come later wait in line, and each is looked at only when the one before it and all that hangs on it are done: however many they are, the
 * request keeps the thread no longer than its slice and the longest of them.
 *
 * @param pause null: the request has its turn. Otherwise to be awaited first; rejects where the request was ended, as all that wait then do
 */
export function openTurnQueue(pause: () => Promise<void> | null): <Found>(run: () => Found) => Found | Promise<Found> {
  let waiting: Waiting[] = [];
  let isDraining = false;

  const drain = async (): Promise<void> => {
    while (waiting.length > 0) {
      const line = waiting;
      waiting = [];
      for (const [at, each] of line.entries()) {
        try {
          for (let turn = pause(); turn !== null; turn = pause()) await turn;
        } catch (error) {
          for (const { fail } of line.slice(at)) fail(error);
          break;
        }
        each.go();
        // What awaits it goes on before the next one is looked at.
        await null;
      }
    }
    isDraining = false;
  };

  return <Found>(run: () => Found): Found | Promise<Found> => {
    if (pause() === null) return run();
    return new Promise<Found>((resolve, fail) => {
      const go = (): void => {
        try {
          resolve(run());
        } catch (error) {
          fail(error as Error);
        }
      };
      waiting.push({ go, fail });
      if (isDraining) return;
      isDraining = true;
      void drain();
    });
  };
}
