/**
 * Does jobs in their order, so many at once. Where one throws, no other is begun, those at work are waited for, and the
 * first thing thrown is thrown on.
 * @template T
 * @param {number} most
 * @param {(() => Promise<T>)[]} jobs
 * @returns {Promise<T[]>} in the order of the jobs
 */
export async function atOnce(most, jobs) {
  /** @type {T[]} */
  const done = [];
  /** @type {unknown[]} */
  const thrown = [];
  const waiting = [...jobs.entries()];
  const workOn = async () => {
    for (let next = waiting.shift(); next !== undefined && thrown.length === 0; next = waiting.shift()) {
      const [place, job] = next;
      try {
        done[place] = await job();
      } catch (error) {
        thrown.push(error);
      }
    }
  };
  await Promise.all(Array.from({ length: most }, workOn));
  if (thrown.length > 0) throw thrown[0];
  return done;
}
