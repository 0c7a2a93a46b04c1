export { hasRemedies } from "@cornerway/engine";
