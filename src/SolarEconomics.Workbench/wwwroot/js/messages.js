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
  saveAnswers: "saveAnswers",
  complete: "complete",
  giveInput: "giveInput",
  letCodeRun: "letCodeRun",
  splitStep: "splitStep",
  joinStep: "joinStep",
  changeKind: "changeKind",
  copyStep: "copyStep",
  putStep: "putStep",
  askVersions: "askVersions",
  lookAtVersion: "lookAtVersion",
  showState: "showState",
  takeState: "takeState",
  leaveState: "leaveState",
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
  versionsFound: "versionsFound",
  notice: "notice",
});

/** How much to work out. */
export const extent = Object.freeze({
  everything: "everything",
  outOfDate: "outOfDate",
  step: "step",
  toHere: "toHere",
});
