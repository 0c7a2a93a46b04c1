/**
 * Address to print and to ask for readiness: a server that listens everywhere also answers on loopback.
 * @param {string} host
 * @param {number} port
 */
export function addressOf(host, port) {
  const name = host === "0.0.0.0" ? "127.0.0.1" : host === "::" ? "::1" : host;
  return `http://${name.includes(":") ? `[${name}]` : name}:${port}`;
}

/**
 * Whether others on the network may reach a server that listens on `host`.
 * @param {string} host
 */
export function isOpenToNetwork(host) {
  return !/^(127\.|localhost$|::1$)/.test(host);
}
