/** How things are carried from scheme to scheme; comes beside the drawing. */
export { carriedText, readCarried } from "../tools/carried-group.ts";
export { pasteGroup } from "../tools/paste-group.ts";
