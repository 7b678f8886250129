import type { LoggedNight, FirstPairs, Outcome, Plan } from "@nightspan/core";
import type { CampDocument } from "@nightspan/edge";
import type { PlannerReply, PlannerRequest } from "../../shared/planner-messages.ts";

/** The part of a Worker that the planner uses. */
export interface WorkerLike {
  postMessage(request: PlannerRequest): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<PlannerReply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
}

export interface PlannerHandlers {
  /** A worker has begun on this request. */
  readonly started: (id: number) => void;
  /** Pairs of trees that are spoken for, whose hangs nobody has worked out. */
  readonly pairs: (id: number, found: FirstPairs) => void;
  /** A whole plan whose proof is still under way. */
  readonly incumbent: (id: number, plan: Plan) => void;
  readonly answered: (id: number, outcome: Outcome<Plan>) => void;
  readonly mistaken: (details: string) => void;
}

interface Timing {
  /** Rest after the last change before planning begins [ms]. */
  readonly restMs: number;
  /** A worker that has been at an outdated request this long is ended [ms]. */
  readonly patienceMs: number;
}

const TIMING: Timing = { restMs: 120, patienceMs: 400 };

type Timer = ReturnType<typeof setTimeout>;

/**
 * Keeps one worker planning the newest camp.
 *
 * A worker cannot be interrupted while it computes, so an outdated request is given a little time to
 * finish; after that its worker is ended and another takes over.
 */
export class Planner {
  readonly #makeWorker: () => WorkerLike;
  readonly #handlers: PlannerHandlers;
  readonly #timing: Timing;
  #worker: WorkerLike | undefined;
  #lastId = 0;
  #running: number | undefined;
  #waiting: PlannerRequest | undefined;
  #restTimer: Timer | undefined;
  #patienceTimer: Timer | undefined;

  constructor(makeWorker: () => WorkerLike, handlers: PlannerHandlers, timing: Timing = TIMING) {
    this.#makeWorker = makeWorker;
    this.#handlers = handlers;
    this.#timing = timing;
  }

  /** Asks for a plan of this camp; what was asked before and not yet answered is dropped. */
  plan(document: CampDocument, nights?: readonly LoggedNight[]): number {
    this.#lastId += 1;
    const log = nights === undefined ? {} : { nights };
    const request: PlannerRequest = { kind: "plan", id: this.#lastId, document, ...log };
    clearTimeout(this.#restTimer);
    this.#restTimer = setTimeout(() => this.#submit(request), this.#timing.restMs);
    return request.id;
  }

  /** Ends the work under way at once, worker and all. */
  stop(): void {
    clearTimeout(this.#restTimer);
    this.#waiting = undefined;
    this.#endWorker();
  }

  #submit(request: PlannerRequest): void {
    this.#waiting = request;
    if (this.#running === undefined) {
      this.#sendNext();
      return;
    }
    this.#patienceTimer ??= setTimeout(() => {
      this.#endWorker();
      this.#sendNext();
    }, this.#timing.patienceMs);
  }

  #sendNext(): void {
    const request = this.#waiting;
    if (request === undefined || this.#running !== undefined) return;
    this.#waiting = undefined;
    this.#running = request.id;
    this.#handlers.started(request.id);
    this.#ready().postMessage(request);
  }

  #ready(): WorkerLike {
    if (this.#worker !== undefined) return this.#worker;
    const fresh = this.#makeWorker();
    fresh.onmessage = ({ data }) => this.#receive(data);
    fresh.onerror = (event) => this.#broken(event.message);
    fresh.onmessageerror = () => this.#broken("A message between page and worker could not be read.");
    this.#worker = fresh;
    return fresh;
  }

  #receive(reply: PlannerReply): void {
    const newest = reply.id === this.#lastId;
    if (reply.kind === "pairs" || reply.kind === "incumbent") {
      if (!newest) return;
      if (reply.kind === "pairs") this.#handlers.pairs(reply.id, reply.found);
      else this.#handlers.incumbent(reply.id, reply.plan);
      return;
    }
    clearTimeout(this.#patienceTimer);
    this.#patienceTimer = undefined;
    this.#running = undefined;
    if (reply.kind === "mistake") this.#handlers.mistaken(reply.details);
    else if (reply.kind === "plan" && newest) this.#handlers.answered(reply.id, reply.outcome);
    this.#sendNext();
  }

  #broken(details: string): void {
    this.#endWorker();
    this.#waiting = undefined;
    this.#handlers.mistaken(details);
  }

  #endWorker(): void {
    clearTimeout(this.#patienceTimer);
    this.#patienceTimer = undefined;
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#running = undefined;
  }
}
