// Prints the peak memory, MB, of a process that draws a stacked building of so many containers up, solves it under all
// combinations, and solves it again after each of a few edits, as a person's session does.
import { condensationCache, solveBuilding } from "../../src/building.ts";
import { stackedModel, stackedScheme } from "./stacked-building.ts";

const EDITS = 3;
const LIMIT_BYTES = 2e9;
const count = Number(process.argv[2]);
const cache = condensationCache(LIMIT_BYTES);
solveBuilding(stackedModel(stackedScheme(count)), cache);
for (let edit = 1; edit <= EDITS; edit++) solveBuilding(stackedModel(stackedScheme(count, 2, edit)), cache);
console.log((process.resourceUsage().maxRSS / 1024).toFixed(0));
