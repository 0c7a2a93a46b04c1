import type { KeyLine } from "../../room/KeysSlip.tsx";

export const reviewKeyLines: readonly KeyLine[] = [
  ["P S H T C W", "tools, while a change request is drawn"],
  ["Page Up, Page Down", "level"],
  ["A, R", "take in; write or answer"],
  ["Ctrl Z", "take the last proposed thing back"],
];
