// state.js: the only state of the page that changes. Others read it and are told when it did.

export function createState() {
  const state = {
    /** @type {object|null} the notebook as the host last told it */
    notebook: null,
    connected: false,
    /** ids of the steps whose working is open */
    open: new Set(),
    presenting: false,
  };
  const listeners = new Set();
  return {
    get now() { return state; },
    /** Changes the state and tells every listener what kind of change it was. */
    change(kind, mutate, detail) {
      mutate(state);
      for (const listener of listeners) listener(kind, state, detail);
    },
    listen(listener) { listeners.add(listener); },
  };
}

/** The step of a notebook by its id, or null. */
export const stepOf = (notebook, id) => notebook?.steps.find((step) => step.id === id) ?? null;

/** Puts a changed step in the place of the one with its id. */
export function replaceStep(notebook, changed) {
  const at = notebook.steps.findIndex((step) => step.id === changed.id);
  if (at >= 0) notebook.steps[at] = changed;
  return at >= 0;
}
