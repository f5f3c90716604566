// turns.js: does heavy work one piece after another and holds back while the page scrolls, so that scrolling stays smooth.

const quiet = 90, longest = 350;

/** @param {Window} window @param {(what: object) => Promise<void>} work */
export function createTurns(window, work) {
  const waiting = new Map();
  let isBusy = false, scrolledAt = -longest;
  const now = () => window.performance.now();
  window.addEventListener("scroll", () => { scrolledAt = now(); }, { passive: true });

  async function next() {
    if (isBusy || waiting.size === 0) return;
    isBusy = true;
    const [what, since] = waiting.entries().next().value;
    // Who scrolls on and on still sees something: after a while the first in line has its turn.
    const hold = () => Math.min(scrolledAt + quiet, since + longest) - now();
    while (hold() > 0 && waiting.has(what)) await new Promise((resolve) => window.setTimeout(resolve, hold()));
    try {
      if (waiting.delete(what)) await work(what);
    } finally {
      isBusy = false;
      window.setTimeout(next);
    }
  }

  return {
    add(what) { if (!waiting.has(what)) waiting.set(what, now()); next(); },
    /** Out of sight before its turn: it is not drawn. */
    leave: (what) => waiting.delete(what),
  };
}
