import { defineExample } from "../example.ts";
import { lamp, SEALED } from "./lamp.ts";

const joined = (count: number) => {
  const built = lamp(SEALED);
  const stops = Array.from({ length: count - 1 }, (_, index) => `XJ${index + 2}`);
  for (const stop of stops) built.part("splice", stop, SEALED);
  const names = ["XJ1", ...stops, "E1.+"];
  const end = built.at(names[1]!);
  built.change("W2", { ends: [built.at("XJ1.2"), end] });
  for (let index = 1; index < names.length - 1; index++)
    built.wire(`${names[index]}.2`, names[index + 1]!, "GY", { area_mm2: 0.5 });
  return built;
};

export default defineExample({
  page: [
    "Every joint in a lead is one more thing that can fail, and one more to open when it does. An adapter needs one; one extension makes two.",
    "Where there are more, take one longer piece of wire.",
  ],
  trips: () => joined(3),
  quiet: () => joined(2),
  quietBecause: "Two joints are what this harness's book allows.",
});
