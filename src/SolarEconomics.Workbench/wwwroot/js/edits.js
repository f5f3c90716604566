// edits.js: holds what was typed for a moment, so that not every letter is a message; everything else waits until it is sent.

export function createEdits({ send, later, cancel, pause = 300 }) {
  const held = new Map();
  function flushOne(step) {
    const edit = held.get(step);
    if (!edit) return;
    cancel(edit.timer);
    // While the line is down the text stays held; the next flush tries again.
    if (send(step, edit.text)) held.delete(step);
  }
  return {
    typed(step, text) {
      if (held.has(step)) cancel(held.get(step).timer);
      held.set(step, { text, timer: later(() => flushOne(step), pause) });
    },
    flush() { for (const step of [...held.keys()]) flushOne(step); },
    /** Whether this step has text that the host has not been sent. */
    holds: (step) => held.has(step),
  };
}
