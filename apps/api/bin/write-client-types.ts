import { writeFileSync } from "node:fs";
import path from "node:path";
import { clientTypes, clientTypesFile } from "./client-types.ts";

// `npm run api:types`: the file is kept in the repository, a test holds it against the routes.
writeFileSync(path.resolve(import.meta.dirname, "../../..", clientTypesFile), await clientTypes());
