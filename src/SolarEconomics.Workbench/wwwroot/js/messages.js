// messages.js: the names of what page and host say to each other. They are written once in the host (Messages.cs); a test compares.

/** What the page asks of the host. */
export const ask = Object.freeze({
  workOut: "workOut",
  stop: "stop",
  startAfresh: "startAfresh",
  editStep: "editStep",
  setAssumption: "setAssumption",
  addStep: "addStep",
  deleteStep: "deleteStep",
  moveStep: "moveStep",
  undo: "undo",
  redo: "redo",
  save: "save",
  complete: "complete",
});

/** What the host tells the page. */
export const told = Object.freeze({
  opened: "opened",
  stepChanged: "stepChanged",
  workChanged: "workChanged",
  assumptionsChanged: "assumptionsChanged",
  saved: "saved",
  sessionChanged: "sessionChanged",
  completed: "completed",
  notice: "notice",
});

/** How much to work out. */
export const extent = Object.freeze({
  everything: "everything",
  outOfDate: "outOfDate",
  step: "step",
  toHere: "toHere",
});
