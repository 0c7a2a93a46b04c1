import { Scheme } from "@cornerway/schema";
import demo from "../../../../shared/demo/scheme.json" with { type: "json" };

/** The demo's nine containers. */
export const demoScheme: Scheme = Scheme.parse(demo);
