import net from "node:net";
import { StartFailure } from "./start-failure.mjs";

const FIRST_PORT = 3000;
const LAST_PORT = 3099;

/**
 * The port given by PORT, which must then be free, or the first free one from 3000 on.
 * @param {NodeJS.ProcessEnv} environment
 * @param {string} host
 */
export async function choosePort(environment, host) {
  const given = environment["PORT"];
  if (given) return givenPort(given, host);
  for (let port = FIRST_PORT; port <= LAST_PORT; port++) if (await isFree(port, host)) return port;
  throw new StartFailure(`Ports ${FIRST_PORT} to ${LAST_PORT} are all taken: set PORT to a free one and start again.`);
}

/**
 * @param {string} given
 * @param {string} host
 */
async function givenPort(given, host) {
  const port = Number(given);
  if (!Number.isInteger(port) || port < 1 || port > 65535)
    throw new StartFailure(`PORT is "${given}": set it to a number from 1 to 65535.`);
  if (!(await isFree(port, host)))
    throw new StartFailure(`Port ${port} is taken: end what uses it, or set PORT to another, or leave PORT out.`);
  return port;
}

/**
 * @param {number} port
 * @param {string} host
 * @returns {Promise<boolean>}
 */
function isFree(port, host) {
  return new Promise((resolve) => {
    const probe = net.createServer();
    probe.once("error", () => resolve(false));
    probe.listen(port, host, () => probe.close(() => resolve(true)));
  });
}
