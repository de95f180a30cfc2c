/** What a sample is called and what it shows; its harness stands in `<id>.harness.json`. */
export type SampleEntry = { readonly id: string; readonly title: string; readonly summary: string };

/** All from the workshop of the Thistledown county mobile library, easiest first. */
export const SAMPLE_LIST: readonly SampleEntry[] = [
  {
    id: "wren-receiver-adapter",
    title: "Receiver adapter of the van Wren",
    summary:
      "Power and loudspeaker blocks to a receiver's plug: joined by function, spares capped, nothing open.",
  },
  {
    id: "wren-receiver-adapter-faults",
    title: "The same adapter, wired on a bad day",
    summary: "Loose leads, an uncapped spare, a swapped pair, feeds exchanged: find them and mend them.",
  },
  {
    id: "reversing-camera",
    title: "Reversing camera of the van Wren",
    summary:
      "Camera fed from the reversing lamp behind a fuse of its own, video on a coax, the display woken by a trigger.",
  },
  {
    id: "amplified-sound",
    title: "Amplified sound for readings",
    summary:
      "Line plugs to a four-channel amplifier, turn-on lead, battery feed with its fuse, four speakers.",
  },
  {
    id: "interface-module",
    title: "Interface module between data bus and receiver",
    summary:
      "Two receptacles of one shell kept apart by a key, eight configuration switches, a twisted pair.",
  },
  {
    id: "trailer-13-to-7",
    title: "13-to-7 adapter for the exhibition trailer",
    summary: "From an ISO 11446 socket to an ISO 1724 one; the pins that the old trailer lacks stay plugged.",
  },
  {
    id: "work-lamp-relay",
    title: "Work lamps over the tail lift",
    summary: "A relay with DIN 72552 terminals, two fuses, a switch, two lamps, two grounds.",
  },
  {
    id: "full-build",
    title: "Wren, the whole build",
    summary: "Everything aboard: fuse board, lamps, sockets, sound, camera, data, trailer; over 300 wires.",
  },
];
