import { keep } from "./backup/keep.ts";
import { keepingUsage, readKeeping } from "./backup/keeping-words.ts";

// What `npm run backup`, `restore`, `archive` and `bring-in` run once the database is there.
const asked = readKeeping(process.argv.slice(2));
const ownerUrl = process.env["OWNER_DATABASE_URL"];
if (asked === undefined) {
  process.stderr.write(`${keepingUsage}\n`);
  process.exitCode = 1;
} else if (ownerUrl === undefined) {
  process.stderr.write("OWNER_DATABASE_URL: the address under which the owner of the tables signs in\n");
  process.exitCode = 1;
} else {
  try {
    const lines = await keep(asked, { ownerUrl, secretsKey: process.env["SECRETS_KEY"] || undefined });
    process.stdout.write(`${lines.join("\n")}\n`);
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 1;
  }
}
