/**
 * Puts questions that come at the same time into one query. Whatever is asked while one is under way goes together into
 * the next, so that every answer is from after its question. `askAll` answers in the order of the keys.
 */
export function gather<K, V>(askAll: (keys: readonly K[]) => Promise<readonly V[]>): (key: K) => Promise<V> {
  interface Question {
    key: K;
    answer: (value: V) => void;
    fail: (reason: unknown) => void;
  }
  let waiting: Question[] = [];
  let underway = false;

  async function askWaiting(): Promise<void> {
    const asked = waiting;
    waiting = [];
    try {
      const values = await askAll(asked.map(({ key }) => key));
      if (values.length !== asked.length) throw new Error(`${asked.length} questions have ${values.length} answers`);
      for (const [at, value] of values.entries()) asked[at]?.answer(value);
    } catch (error) {
      for (const { fail } of asked) fail(error);
    }
    if (waiting.length > 0) return askWaiting();
    underway = false;
  }

  return (key) =>
    new Promise((answer, fail) => {
      waiting.push({ key, answer, fail });
      if (underway) return;
      underway = true;
      setImmediate(() => void askWaiting()); // after every request that has come in by now is read
    });
}
