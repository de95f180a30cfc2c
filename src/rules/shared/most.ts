import type { ContactKey } from "../../graph/contacts.ts";
import type { PartId, WireId } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import type { View } from "./full-load.ts";
import { heaviestStates } from "./states.ts";

/** The most that flows through a thing, and in which of the solved states. */
export type Most = { readonly amps: number; readonly view: View };

/**
 * The most that loads draw through each wire, fuse and source, with all on that can be on. Current
 * that no load explains is a short, of which other rules speak: it is left out.
 */
export class Mosts {
  private readonly explained_A: number;

  constructor(private readonly view: View) {
    const { loads, coils } = view.drawn_A;
    this.explained_A = 1 + loads * 1.05 + coils;
  }

  wire(id: WireId): Most | undefined {
    return this.most(this.view.amps(id));
  }

  /** Every wire that carries so many amperes or more. */
  *wiresFrom(least_A: number): Iterable<readonly [WireId, Most]> {
    for (const [id, amps] of this.view.wiresFrom(least_A)) {
      const most = this.most(amps);
      if (most) yield [id, most];
    }
  }

  fuse(id: PartId): Most | undefined {
    return this.most(this.view.fuse_A(id) ?? 0);
  }

  /** What a lead of the vehicle gives, by contact. */
  source(key: ContactKey): Most | undefined {
    return this.most(Math.max(0, this.view.source(key)?.amps ?? 0));
  }

  private most(signed_A: number): Most | undefined {
    const amps = Math.abs(signed_A);
    return amps > 0 && amps <= this.explained_A ? { amps, view: this.view } : undefined;
  }
}

const remembered = new WeakMap<Context, Mosts | null>();

/** `null` where it is said of nothing how much it draws: then there is nothing to solve for. */
export function mostsOf(context: Context): Mosts | null {
  let known = remembered.get(context);
  if (known === undefined) {
    // What loads are stated to draw they draw at about their nominal volts: neither charging nor cranking.
    known = statesCurrents(context) ? new Mosts(heaviestStates(context)[1]) : null;
    remembered.set(context, known);
  }
  return known;
}

/** Whether it is said of anything how much it draws; where it is not, there is nothing to solve for. */
export function statesCurrents({ points }: Context): boolean {
  return points.all.some(({ part, contact, direction }) => {
    if (part.kind === "load") return part.current_A !== "unknown";
    return direction !== "gives" && contact.cavity !== null && contact.cavity.current_A !== "unknown";
  });
}
