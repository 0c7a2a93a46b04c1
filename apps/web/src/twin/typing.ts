import type { Operation } from "@cornerway/schema";
import { createContext } from "react";

/** Told what a form would draw as it stands, while someone types in it; null once it is drawn or makes no sense. */
export const Typing = createContext<(operations: readonly Operation[] | null) => void>(() => undefined);
