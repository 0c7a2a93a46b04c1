import type { UnitSystem } from "@cornerway/schema";
import { useSyncExternalStore } from "react";
import { unitsSetting } from "./units-setting.ts";

/** The units whoever is signed in reads in; what is drawn with them is drawn anew when they change. */
export const useUnits = (): UnitSystem => useSyncExternalStore(unitsSetting.subscribe, unitsSetting.get);
