export { RecordEntry } from "@cornerway/schema";
