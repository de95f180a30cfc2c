import type { Yard } from "./yard.ts";

/** A lamp of a kind with its filament. */
export function filament(yard: Yard, name: string, current_A: number): string {
  return yard.part("load", "E", {
    name,
    type: "lamp",
    function: name,
    current_A,
    behaviour: "filament",
    voltage_V: yard.range(),
  });
}
