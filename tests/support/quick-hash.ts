import { hash } from "@node-rs/argon2";

/**
 * A hash of a password at the least cost there is (RFC 9106, 3.1: 8 KiB for one lane), for people whom a test needs to
 * sign in: who verifies goes by the cost the hash itself names. What the service hashes costs what it always does.
 */
export const quickHash = (password: string): Promise<string> =>
  hash(password, { memoryCost: 8, timeCost: 1, parallelism: 1 });
