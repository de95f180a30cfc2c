import type { PartId } from "../../../graph/harness.ts";
import type { CircuitElement } from "../../solve/circuit.ts";
import { prepare } from "../../solve/prepare.ts";
import { USUAL } from "../assumed.ts";
import { FRAME, open } from "../builder.ts";
import { settleBoxes } from "../settle-boxes.ts";
import { Answer } from "./answer.ts";
import { type AtState, setOf } from "./dials.ts";
import type { Plan } from "./plan.ts";

/** Where to begin: what a source feeds, through a closed switch or an output at most, stands at its volts; all else at 0. */
function guessed(elements: readonly CircuitElement[], joined: Int32Array): Float64Array {
  const fed = new Float64Array(joined.length);
  const pass = (from: number, to: number, more_V: number) => {
    if (joined[to] !== FRAME && fed[joined[to]!] === 0) fed[joined[to]!] = fed[joined[from]!]! + more_V;
  };
  for (const element of elements) {
    if (element.kind !== "supply" || joined[element.minus] !== FRAME) continue;
    const to = joined[element.plus]!;
    if (to !== FRAME) fed[to] = element.emf_V;
  }
  for (const element of elements) {
    if (element.kind === "output") pass(element.minus, element.plus, element.emf_V);
    else if (element.kind === "switch" && element.closed) {
      pass(element.from, element.to, 0);
      pass(element.to, element.from, 0);
    }
  }
  // The number of those that are joined is the first node of them, so none is read after it is written.
  for (let node = joined.length - 1; node >= 0; node--) fed[node] = fed[joined[node]!]!;
  return fed;
}

/** Up to this many relays times nodes each relay is turned over by itself, to see if it would hold; else all at once. */
const MOST_TURNED = 3000;

/**
 * The circuit of some parts and wires that no others join, but for the frame. What is the same in every state is built and
 * drawn together once; each state adds what it changes, and states that set all of it alike share their answer.
 */
export class Network {
  private readonly answers = new Map<string, Answer>();

  /** @param elements those of the plan that every state has, one of them perhaps opened */
  constructor(
    readonly plan: Plan,
    private readonly elements: readonly CircuitElement[] = plan.reduced.elements,
  ) {}

  /** The same with one of its grounds opened. */
  withoutGround(part: PartId): Network {
    const { reduced, elementsOf } = this.plan;
    const at = reduced.through[elementsOf.get(part)![0]!]!;
    const elements = this.elements.slice();
    elements[at] = open(elements[at]!);
    return new Network(this.plan, elements);
  }

  /** What it shows in a state. */
  at(at: AtState): Answer {
    const key = setOf(this.plan.dials, at);
    let answer = this.answers.get(key);
    if (!answer) {
      answer = this.solve(at);
      this.answers.set(key, answer);
    }
    return answer;
  }

  private solve(at: AtState): Answer {
    const { plan } = this;
    const { nodeCount } = plan.reduced;
    const { elements, choices, boxes, givers, takers, owners, setting } = plan.complete(this.elements, at);
    const circuit = { nodeCount, ground: FRAME, elements };
    plan.prepared ??= prepare(circuit);
    const built = { circuit, owners: plan.ownersWith(owners), choices, boxes, givers, takers };
    const settled = settleBoxes(built, USUAL.wakes * setting.nominal_V, {
      prepared: plan.prepared,
      solution: { volts: guessed(elements, plan.joined) },
      isOfShape: true,
      turnEachRelay: plan.prepared.coils.length * nodeCount <= MOST_TURNED,
    });
    return new Answer(plan, settled);
  }
}
