import type { OpenWorking } from "../../working/open-working.ts";

export function letBraced(working: OpenWorking, beam: { readonly unbracedMm: number; readonly cb: number }): void {
  working.let("L_b", beam.unbracedMm, "mm", "length between lateral supports", "derived");
  working.let("C_b", beam.cb, "1", "moment gradient", "derived");
}

/**
 * Records M_LTB of an I shape or a channel (F2.2). Needs E, F_y, M_p, S_x, I_y, r_y, J, C_w, h_0, c, L_b and C_b in the
 * working.
 */
export function lateralTorsional(working: OpenWorking): void {
  working.compute("L_p", "1.76*r_y*sqrt(E/F_y)", "mm", "Eq. F2-5");
  if (working.when("L_b", "<=", "L_p", "F2.2(a)")) {
    working.compute("M_LTB", "M_p", "N·mm");
    return;
  }
  working.compute("r_ts", "sqrt(sqrt(I_y*C_w)/S_x)", "mm", "Eq. F2-7");
  working.compute("j", "J*c/(S_x*h_0)", "1");
  working.compute("L_r", "1.95*r_ts*E/(0.7*F_y)*sqrt(j + sqrt(j^2 + 6.76*(0.7*F_y/E)^2))", "mm", "Eq. F2-6");
  if (working.when("L_b", "<=", "L_r", "F2.2(b)")) {
    working.compute("M_LTB", "min(M_p, C_b*(M_p - (M_p - 0.7*F_y*S_x)*(L_b - L_p)/(L_r - L_p)))", "N·mm", "Eq. F2-2");
    return;
  }
  working.compute("F_cr", "C_b*π^2*E/(L_b/r_ts)^2*sqrt(1 + 0.078*j*(L_b/r_ts)^2)", "MPa", "Eq. F2-4");
  working.compute("M_LTB", "min(M_p, F_cr*S_x)", "N·mm", "Eq. F2-3");
}
