/** The blades themselves are the catalogue's; this room reckons with them. */
export {
  BLADES,
  type Blade,
  type BladeForm,
  BREAKING_CAPACITY_A,
  blade,
  type FuseColour,
} from "../../catalogue/fuses.ts";
