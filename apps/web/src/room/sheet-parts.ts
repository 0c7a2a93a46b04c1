/** The script of each sheet by its number, fetched when the sheet is turned to. */
export const sheetParts = {
  1: () => import("../screens/scheme/SchemeSheet.tsx"),
  2: () => import("../screens/openings/OpeningsSheet.tsx"),
  3: () => import("../screens/review/ReviewSheet.tsx"),
  4: () => import("../screens/compare/CompareSheet.tsx"),
  5: () => import("../screens/status/StatusSheet.tsx"),
  6: () => import("../screens/calculations/CalculationsSheet.tsx"),
  7: () => import("../screens/record/RecordSheet.tsx"),
};

export const fetchSheet = async (sheet: string): Promise<unknown> =>
  Object.entries(sheetParts).find(([number]) => number === sheet)?.[1]();
