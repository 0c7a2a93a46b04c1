import { bareEdgeRule } from "../model/bare-edges.ts";

/** What strength takes for granted where a scheme says nothing; common practice, no published source. Printed with every answer. */
export const assumed = [
  "container steel without a record: yield 235 MPa; each part also at 343 MPa, if proved",
  "frames of openings: tube 100×100×6, of windows 60×60×3, yield 345 MPa; an added post of unknown section is the same tube",
  `openings that are not framed: ${bareEdgeRule}`,
  "dead load acts on the building as it is drawn: posts, beams, seats and ties are in and tight before what they carry is set down; what is left after a cut carries as if it had been cut before; what is cut after placing is relieved by shores or jacks until its frame is welded in: under its load a frame would take about a tenth less of the dead load, the rails as much more (measured on sides of 40 ft units)",
  "door header: box 150×100×3",
  "rails held by their sheet where it is whole; across by cross members and roof sheet; cross members by the floor boards",
  "door leaves carry nothing unless welded shut, then half of what the blind end does; roof 30 000 and floor 5000 N/mm in shear, both also ×¼ and ×4",
  "fittings and rails on rails bear over 100 mm, a drawn seat evenly over its own length; half of the loaded face of a tube rail is used already",
  "corner posts stand either way round in their corner; judged without their sheet, the bound with it beside",
  "hold-downs, posts and beams on pads: four headed anchors of 16 mm, 150 mm deep, 200 mm apart, in the middle of the pad or about the post or beam",
  "added beams: bolted to steel and pads with ¾ in A325-N, four where seated and three where framed, welded to containers; held sideways where they bear on something",
  "ties between units: plates 150 × 10, 300 mm between their welds, level, and upright where they carry upright force; stiff as these, and welded: without play under any set of assumptions",
  "pads rigid, and with locks tied also on soft ground of 10 MN/m³",
  "locks tied: what bears without lock or weld holds by friction alone, as far as that goes, on gravity and wind at strength level; in earthquakes, at allowable level and where it slides it is taken to be locked, and said to need it",
  "a pad carries its unit in its middle; its own weight is left out",
  "direct analysis: level loads times the greatest B₂ of any unit as a storey of its own, moments of members times B₁, 0.8 of every stiffness in both",
  "level forces on a unit's mass act along its top side rails",
] as const;
