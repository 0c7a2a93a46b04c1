/** US customary to SI, as the published values are converted: 1 kip 4.448222 kN, 1 ksi 6.894757 MPa, 1 in 25.4 mm. */
export const ksi = 6.894757;
export const inch = 25.4;
export const kip = 4448.222;
export const kipFt = 1.355818e6;
export const foot = 304.8;
