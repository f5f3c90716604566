// completions.js: matches what the host offers to the field that asked for it.
import { ask } from "./messages.js";

export function createCompletions(say, later) {
  const waiting = new Map();
  let count = 0;
  const nothing = { from: 0, items: [] };
  return {
    ask(step, text, position) {
      const request = ++count;
      const answered = new Promise((resolve) => waiting.set(request, resolve));
      if (!say(ask.complete, { step, text, position, request })) return Promise.resolve(nothing);
      later(() => answer({ request, ...nothing }), 15000);
      return answered;
    },
    answer,
  };
  function answer({ request, from, items }) {
    waiting.get(request)?.({ from, items });
    waiting.delete(request);
  }
}
