import { execFileSync } from "node:child_process";
import { statSync } from "node:fs";
import path from "node:path";

/** The account PostgreSQL runs under; empty means that of this process. */
export interface SystemAccount {
  uid?: number;
  gid?: number;
}

/** PostgreSQL refuses to run as root, so root hands it to `nobody`; no account is created. */
export function systemAccount(): SystemAccount {
  if (process.getuid?.() !== 0) return {};
  return { uid: accountNumber("-u"), gid: accountNumber("-g") };
}

/** Whether an account with no rights of its own may enter every folder on the way to `place`. */
export function openToOthers(place: string): boolean {
  const OTHERS_ENTER = 0o001;
  for (let folder = path.resolve(place); ; folder = path.dirname(folder)) {
    if ((statSync(folder).mode & OTHERS_ENTER) === 0) return false;
    if (folder === path.dirname(folder)) return true;
  }
}

function accountNumber(flag: "-u" | "-g"): number {
  return Number(execFileSync("id", [flag, "nobody"], { encoding: "utf8" }));
}
