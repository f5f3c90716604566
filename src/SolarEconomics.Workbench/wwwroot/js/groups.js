// groups.js: puts steps together under the question they answer. Pure; draws nothing.

const severity = ["failed", "stopped", "working", "waiting", "old", "perhaps", "none", "kept", "done"];

/**
 * A question starts at a text step with a heading; the steps after it belong to it. Code before any heading is a question of its own.
 * @param {Array<object>} steps
 * @returns {Array<{id: string, heading: string, text: object|null, parts: Array<object>, state: string}>}
 */
export function groupByQuestion(steps) {
  const groups = [];
  for (const step of steps) {
    const last = groups.at(-1);
    if (step.kind === "text" && step.heading) groups.push({ id: step.id, heading: step.heading, text: step, parts: [] });
    else if (last && (last.text || step.kind === "text")) last.parts.push(step);
    else groups.push({ id: step.id, heading: step.heading || "", text: null, parts: [step] });
  }
  return groups.map((group) => ({ ...group, state: stateOf(group.parts) }));
}

/** The state that a reader must know first; null for a group with nothing to work out. */
export function stateOf(parts) {
  const states = parts.filter((part) => part.kind === "code").map((part) => part.state);
  return severity.find((state) => states.includes(state)) ?? null;
}

/** How many steps there are to work out, and how many of them are out of date. */
export function pending(steps) {
  const code = steps.filter((step) => step.kind === "code");
  return { all: code.length, old: code.filter((step) => step.state === "old" || step.state === "perhaps").length };
}
