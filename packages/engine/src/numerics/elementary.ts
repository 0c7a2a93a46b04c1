export { sin, cos, tan } from "./elementary/sine-cosine.ts";
export { atan, atan2, asin, acos } from "./elementary/arctangent.ts";
export { exp, tanh } from "./elementary/exponential.ts";
export { log, log10 } from "./elementary/logarithm.ts";
export { pow } from "./elementary/power.ts";
export { cbrt } from "./elementary/cube-root.ts";
export { hypot } from "./elementary/hypotenuse.ts";
export { sinDegThousandths, cosDegThousandths } from "./elementary/degrees.ts";
