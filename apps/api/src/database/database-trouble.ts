export type DatabaseTroubleCode =
  | "disk-full"
  | "unreachable"
  | "sign-in-refused"
  | "role-refused"
  | "programs-missing"
  | "data-folder-out-of-reach"
  | "password-lost"
  | "other-version"
  | "did-not-start"
  | "migration-edited"
  | "migration-unknown"
  | "migration-failed";

/** What kept the database from serving; `code` tells the cases apart, `detail` names the thing concerned. Carries no password. */
export class DatabaseTrouble extends Error {
  readonly code: DatabaseTroubleCode;
  readonly detail: string;

  constructor(code: DatabaseTroubleCode, detail: string, cause?: unknown) {
    super(`${code}: ${detail}`, cause === undefined ? undefined : { cause });
    this.name = "DatabaseTrouble";
    this.code = code;
    this.detail = detail;
  }
}
