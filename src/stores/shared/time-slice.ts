/** Long work in turns too short for a thumb to notice, on a phone as on a desk. */
import { atOnce, type InTurns } from '../../core/base/turns';

/** Milliseconds of one turn: a browser that is busy for 50 feels stuck. */
const TURN = 10;

/** 'background': what can wait until an answer that is being worked out is there. */
export type Priority = 'user-visible' | 'background';

interface Scheduler {
  readonly postTask: (work: () => void, how: { readonly priority: Priority }) => Promise<void>;
}
/** Takes a turn as soon as the browser has done what waits. A timer would wait 4 ms more each time, a quarter of it all. */
const nextInLine = (turn: () => void, priority: Priority): void => {
  const { scheduler } = globalThis as { scheduler?: Partial<Scheduler> };
  if (scheduler?.postTask) void scheduler.postTask(turn, { priority });
  else setTimeout(turn);
};

/** Works until it is done and then says so; the first turn is taken at once. Returns a function that stops it. */
export function inTurns<T>(
  work: InTurns<T>,
  done: (result: T) => void,
  priority: Priority = 'user-visible',
): () => void {
  let isStopped = false;
  const turn = () => {
    if (isStopped) return;
    const end = performance.now() + TURN;
    do {
      const step = work.next();
      if (step.done) return done(step.value);
      if (step.value === 'rest') break;
    } while (performance.now() < end);
    nextInLine(turn, priority);
  };
  turn();
  return () => {
    isStopped = true;
  };
}

/** Work that waits for its turn: one piece at a time, none of it in the task that asks for it. */
export function inLine() {
  interface Piece {
    readonly begin: () => () => void;
    stop?: () => void;
  }
  const waiting: Piece[] = [];
  let at: Piece | undefined;
  const next = () => {
    at = waiting.shift();
    if (at) at.stop = at.begin();
  };
  const goOn = () => void setTimeout(next);
  /** Returns a function that takes it out again. */
  return <T>(work: InTurns<T>, done: (result: T) => void): (() => void) => {
    const piece: Piece = {
      begin: () =>
        inTurns(work, (result) => {
          done(result);
          goOn();
        }),
    };
    waiting.push(piece);
    if (!at && waiting.length === 1) goOn();
    return () => {
      const place = waiting.indexOf(piece);
      if (place >= 0) waiting.splice(place, 1);
      else if (at === piece) {
        piece.stop?.();
        goOn();
      }
    };
  };
}

/** Answers worked out ahead, by what was asked; everything else is worked out when it is asked for. */
export function answersAhead<J, T>(keyOf: (job: J) => string, workOn: (job: J) => InTurns<T>) {
  const known = new Map<string, T>();
  return {
    now: (job: J): T => known.get(keyOf(job)) ?? atOnce(workOn(job)),
    inTurns(job: J, done: (answer: T) => void): () => void {
      const answer = known.get(keyOf(job));
      if (answer === undefined) return inTurns(workOn(job), done);
      done(answer);
      return () => {};
    },
    prepare: (job: J): Promise<void> =>
      new Promise((resolve) =>
        inTurns(workOn(job), (answer) => {
          known.set(keyOf(job), answer);
          resolve();
        }),
      ),
  };
}

/**
 * Answers that may take more than one turn. `now` waits for the answer; `soon` gives it where it is known or the first
 * turn brings it, and otherwise nothing: it goes on with what was asked last and calls `ready` once that is answered.
 */
export function answersSoon<Q, A>(keyOf: (question: Q) => string, workOn: (question: Q) => InTurns<A>) {
  let last: { readonly key: string; readonly answer: A } | undefined;
  let working: { readonly key: string; readonly stop: () => void } | undefined;
  const keep = (key: string, answer: A): A => {
    last = { key, answer };
    return answer;
  };
  const known = (question: Q): A | undefined => (last?.key === keyOf(question) ? last.answer : undefined);
  return {
    now: (question: Q): A => known(question) ?? keep(keyOf(question), atOnce(workOn(question))),
    soon(question: Q, ready: () => void): A | undefined {
      const key = keyOf(question);
      if (working?.key === key) return undefined;
      working?.stop();
      working = undefined;
      if (last?.key === key) return last.answer;
      const stop = inTurns(workOn(question), (answer) => {
        keep(key, answer);
        if (working === undefined) return;
        working = undefined;
        ready();
      });
      if (last?.key === key) return last.answer;
      working = { key, stop };
      return undefined;
    },
    /** Works it out before it is asked. */
    prepare: (question: Q): Promise<void> =>
      new Promise((resolve) =>
        inTurns(workOn(question), (answer) => {
          keep(keyOf(question), answer);
          resolve();
        }),
      ),
  };
}
