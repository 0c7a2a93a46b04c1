/**
 * Ends the process with one line unless `version` is in the range that package.json states, `^20.19 || >=22.12`.
 * @param {string} version such as "20.19.0"
 */
export function requireNode(version) {
  if (supportsNode(version)) return;
  console.error(
    `Cornerway needs Node 20.19 or later in the 20 line, or 22.12 or later; this is ${version}. Install one and start again.`,
  );
  process.exit(1);
}

/** @param {string} version */
export function supportsNode(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  if (major === 20) return minor >= 19;
  return major === 22 ? minor >= 12 : major > 22;
}
