/** Which side of the building an elevation looks at. */
export type Side = "south" | "north" | "east" | "west";
