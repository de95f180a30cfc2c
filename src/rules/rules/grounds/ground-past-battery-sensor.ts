import type { Point } from "../../../electrical/points.ts";
import { type ContactKey, contactKey, keyOfEnd } from "../../../graph/contacts.ts";
import type { PartId, Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { copperFrom, pointsAt } from "../../shared/grounding.ts";
import { byName, compareNames, sayList, sayPoints, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "ground-past-battery-sensor",
    group: "grounds",
    severity: "weak",
    summary:
      "Where the vehicle measures its battery's current at the minus post, nothing else lands on that post.",
    source: "workshop manuals on battery sensors (three agree) and a service bulletin",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const sensed = context.parts.filter((part) => part.kind === "supply" && part.sensor === "on-minus");
    if (!sensed.length) return;
    // A ground that is the battery's post is the same place by another name.
    const posts = [
      ...sensed.map((part) => contactKey(part.id, 2)),
      ...context.parts
        .filter((part) => part.kind === "ground" && part.serves === "battery-post")
        .map((part) => contactKey(part.id, 1)),
    ];
    const isPost = new Set<ContactKey>(posts);
    for (const post of posts) {
      const wrong: { readonly wire: Wire; readonly users: readonly Point[] }[] = [];
      for (const wire of context.traced.wiresAt(post)) {
        const users = usersBehind(context, wire, isPost);
        if (users.length) wrong.push({ wire, users });
      }
      if (!wrong.length) continue;
      wrong.sort((a, b) => compareNames(a.wire.designation, b.wire.designation));
      const users = [...new Set(wrong.flatMap((one) => one.users))].sort(byName);
      const part = context.traced.partOf(post)!;
      yield {
        message: `${sayList(wrong.map(({ wire }) => sayWire(wire)))} ${wrong.length === 1 ? "brings" : "bring"} ${sayPoints(context, users)} straight to the minus post of ${part.designation}, past the battery sensor.`,
        consequence:
          "The vehicle does not see this current and misjudges its battery: charging and stop-start go wrong, fault codes are set, and it takes hours at rest until it has learned anew.",
        remedy: "Land the lead on the body, where the sensor's own cable lands.",
        about: [...wrong.map(({ wire }) => ({ wire: wire.id })), { part: part.id as PartId }],
      };
    }
  },
});

/** What draws or charges behind a wire that lands on the post; nobody where the wire goes to the body. */
function usersBehind(context: Context, wire: Wire, isPost: ReadonlySet<ContactKey>): readonly Point[] {
  const far = wire.ends.map(keyOfEnd).find((key) => key !== null && !isPost.has(key));
  if (!far) return [];
  const reached = pointsAt(
    context,
    copperFrom(context, [far], {
      wire: (other) => other !== wire,
      contact: (key) => !isPost.has(key),
      fuses: true,
    }),
  );
  if (
    reached.some(
      ({ part, means, side }) => part.kind === "ground" || (side === "vehicle" && means.group === "ground"),
    )
  )
    return [];
  return reached.filter(
    (point) => point.unit !== null && point.side !== "vehicle" && point.means.group === "ground",
  );
}
