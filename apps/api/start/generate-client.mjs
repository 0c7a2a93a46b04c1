// `npm run generate`: writes the database client from prisma/schema.prisma.
import { spawnSync } from "node:child_process";
import { CLONE } from "./clone.mjs";
import { generateEnvironment, generateWords } from "./generate.mjs";

const [program = "", ...words] = generateWords();
process.exitCode =
  spawnSync(program, words, { cwd: CLONE, env: generateEnvironment(process.env), stdio: "inherit" }).status ?? 1;
