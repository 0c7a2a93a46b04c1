const EVERY_MS = 10_000;

/**
 * One plain line of progress.
 * @param {string} line
 */
export function say(line) {
  console.log(line);
}

/**
 * Says `line`, then every ten seconds how long the work has taken, so that a long step does not look dead.
 * @template T
 * @param {string} line
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function saying(line, work) {
  say(`${line} …`);
  const startMs = performance.now();
  const timer = setInterval(() => say(`  still at it after ${seconds(startMs)} s`), EVERY_MS);
  try {
    return await work();
  } finally {
    clearInterval(timer);
  }
}

/** @param {number} startMs */
function seconds(startMs) {
  return Math.round((performance.now() - startMs) / 1000);
}
