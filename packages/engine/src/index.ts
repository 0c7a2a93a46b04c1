export {
  sin, cos, tan, atan, atan2, asin, acos, exp, tanh, log, log10, pow, cbrt, hypot, sinDegThousandths, cosDegThousandths,
} from "./numerics/elementary.ts";
