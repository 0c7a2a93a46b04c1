import { createHash, randomBytes } from "node:crypto";

/** 32 random bytes in base64url: for cookies and addresses. */
export const newSecret = (): string => randomBytes(32).toString("base64url");

/** All that is kept of a secret. Its 256 bits need no salt and no slow hash. */
export const secretHash = (secret: string): string => createHash("sha256").update(secret).digest("hex");
