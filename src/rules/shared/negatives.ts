import type { Point } from "../../electrical/points.ts";
import { type ContactKey, contactKey, refOfKey } from "../../graph/contacts.ts";
import type { Context } from "../context.ts";
import { walkLeads } from "./lead-walk.ts";

/** The battery's minus, or a ground of which it is said that it is the battery's post. */
export function isPostPoint({ part, contact }: Point): boolean {
  return (
    (part.kind === "supply" && contact.number === 2) ||
    (part.kind === "ground" && part.serves === "battery-post")
  );
}

/** The battery's post that leads reach from contacts before they meet a fuse or a stud on the body. */
export function postFrom(context: Context, starts: readonly ContactKey[]): Point | undefined {
  const posts = context.points.all.filter(isPostPoint);
  if (!posts.length) return undefined;
  const reached = walkLeads(context, starts);
  return posts.find((post) => {
    for (let at = reached.get(post.key)?.before; at; at = at.before) {
      const { part } = refOfKey(at.key);
      const kind = context.harness.parts[part]?.kind;
      if (kind === "ground" || (kind === "supply" && at.key !== contactKey(part, 2))) return false;
    }
    return reached.has(post.key);
  });
}
