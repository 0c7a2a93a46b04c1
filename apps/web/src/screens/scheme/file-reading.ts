export { operationsBetween } from "@cornerway/schema";
export { readFile } from "./read-file.ts";
