/**
 * On a view this small, px a metre, figures and numbers need the room: names and figures are lettered small, only an
 * opening twice its hexagon shows one, and nobody stands beside the building.
 */
export const smallBelowPxPerM = 18;
