import { define, type WireFunction } from "./define.ts";

const sensor = (id: string, name: string, meanings: string, synonyms: readonly string[] = []): WireFunction =>
  define(id, name, "control", meanings, { synonyms });

/** Senders and sensors of engine and vehicle. */
export const SENSORS: readonly WireFunction[] = [
  sensor(
    "coolant-temperature",
    "coolant temperature",
    "coolant temperature sensor? signal? engine? sender? | engine temperature sensor? sender? | temperature@0.5 sensor? sender? signal?",
    ["water temperature"],
  ),
  sensor("oil-temperature", "oil temperature", "oil temperature sensor? sender? signal?"),
  sensor(
    "oil-pressure",
    "oil pressure",
    "oil pressure switch? sensor? sender? signal? lamp? warning? | oil switch | oil sender@0.8 | oil gauge@0.9 | oil pressure gauge",
    ["oil switch"],
  ),
  sensor(
    "fuel-level",
    "fuel level",
    "fuel level sensor? sender? signal? gauge? | fuel sender gauge? | fuel gauge | fuel sensor",
    ["fuel sender"],
  ),
  sensor("fuel-low", "low-fuel signal", "fuel low signal? lamp? warning? | fuel reserve lamp?"),
  sensor(
    "outside-temperature",
    "outside temperature",
    "outside temperature sensor? signal? | ambient temperature sensor? signal? | temperature@0.3 sensor?",
    ["ambient temperature"],
  ),
  sensor(
    "intake-air-temperature",
    "intake air temperature",
    "intake temperature sensor? air? | air temperature intake? sensor? signal?",
  ),
  sensor(
    "manifold-pressure",
    "manifold pressure",
    "manifold pressure sensor? signal? | boost pressure sensor? | intake pressure sensor? | map sensor signal?",
    ["map sensor", "boost"],
  ),
  sensor(
    "throttle-position",
    "throttle position",
    "throttle position? sensor? signal? | tps sensor? signal? | pedal accelerator position? signal? sensor?",
  ),
  sensor("crankshaft-sensor", "crankshaft sensor", "crankshaft sensor? position? signal?"),
  sensor("camshaft-sensor", "camshaft sensor", "camshaft sensor? position? signal?"),
  sensor("oxygen-sensor", "oxygen sensor", "oxygen sensor? signal? | lambda sensor? signal?", ["lambda"]),
  sensor("knock-sensor", "knock sensor", "knock sensor? signal?"),
  sensor(
    "wheel-speed",
    "wheel-speed sensor",
    "wheel speed sensor? signal? | abs sensor signal? wheel? | abs wheel sensor",
  ),
  sensor("injector", "injector", "injector signal? | injector 1 | injection valve"),
  sensor("coolant-level", "coolant level", "coolant level sensor? signal? | washer level"),
  sensor("rain-light-sensor", "rain and light sensor", "rain sensor? lamp? signal? | twilight sensor?"),
  sensor(
    "water-level",
    "fresh-water level",
    "water level sensor? sender? tank? fresh? gauge? | water gauge fresh? tank? | fresh level | fresh gauge | tank level sensor? sender? | water sender",
    ["tank level"],
  ),
  sensor(
    "waste-level",
    "waste-water level",
    "waste level sensor? sender? water? tank? | waste tank float? | waste float | waste water tank? | waste sender tank? water? | waste sensor tank? water?",
    ["grey water"],
  ),
  sensor("depth-sounder", "depth sounder", "depth sensor? signal? sounder? | echo sounder"),
  sensor("rudder-sender", "rudder angle sender", "rudder sender? sensor? signal? position?"),
];
