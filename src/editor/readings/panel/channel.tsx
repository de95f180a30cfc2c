import { useMemo } from "react";
import type { Speaker } from "../../../graph/harness.ts";
import { useEditor } from "../../state/use-editor.ts";
import { FigureRows, ShowLink } from "./figure-rows.tsx";
import { type ChannelRow, channelRows } from "./whole-model.ts";

/** One speaker channel: what it sees, what the wire takes, what arrives. */
export function Channel({ channel }: { readonly channel: ChannelRow }) {
  return (
    <section className="figures-group">
      <h4>
        <ShowLink about={channel.about}>{channel.name}</ShowLink> {channel.polarity}
      </h4>
      {channel.trouble.map((words) => (
        <p key={words} className="budget-over">
          {words}
        </p>
      ))}
      <FigureRows lines={channel.lines} />
    </section>
  );
}

/** The channels that one speaker hangs on. */
export function ChannelsOf({ speaker }: { readonly speaker: Speaker }) {
  const harness = useEditor((state) => state.history.present);
  const traced = useEditor((state) => state.derived.traced);
  const { parts, wires, settings } = harness;
  // biome-ignore lint/correctness/useExhaustiveDependencies: where parts stand on the drawing changes no channel
  const rows = useMemo(
    () => channelRows(harness, traced, speaker.id),
    [parts, wires, settings, traced, speaker.id],
  );
  if (rows.length === 0)
    return (
      <p className="figures-quiet">
        No channel that is drawn drives it: no output reaches both its contacts.
      </p>
    );
  return rows.map((channel) => <Channel key={channel.id} channel={channel} />);
}
