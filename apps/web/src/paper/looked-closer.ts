export { detailsOf } from "@cornerway/engine";
export { firstLine } from "./section-line.ts";
