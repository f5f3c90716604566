// words.js: every label and sentence of the page's own, in one place. Results bring their own words.

/** The state of a step: a word for each; its shape is drawn by the class of the same name. */
export const stateWords = Object.freeze({
  none: "not yet worked out",
  waiting: "waiting",
  working: "working",
  done: "done",
  kept: "answer from before",
  old: "out of date",
  perhaps: "perhaps out of date",
  failed: "failed: see message",
  stopped: "stopped by you",
});

/** The word for a state that a reader of the answer must know; empty where the answer simply stands. */
export const stateWorthSaying = (state) => ["none", "kept", "done", null].includes(state) ? "" : stateWords[state];

/** @param {number} count @param {string} one */
export const counted = (count, one, many = `${one}s`) => `${count} ${count === 1 ? one : many}`;

/** Seconds as a reader says them: 0.2 s, 12 s, 3 min. */
export function duration(seconds) {
  if (seconds === null || seconds === undefined) return "";
  if (seconds < 0.05) return "under 0.1 s";
  if (seconds < 10) return `${seconds.toFixed(1)} s`;
  return seconds < 120 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;
}

/** A guess of seconds: no decimals that it does not have. */
export const roughly = (seconds) => seconds < 100 ? `${Math.ceil(seconds)} s` : `${Math.round(seconds / 60)} min`;

/** How far work is, as far as it is known: 40 % done, about 12 s left. */
export const soFar = (share, seconds) => [
  share === null || share === undefined ? "" : `${Math.floor(share * 100)} % done`,
  seconds > 1 ? `about ${roughly(seconds)} left` : "",
].filter(Boolean).join(", ");

/** An answer that is too long to be shown. */
export const tooLong = ({ what, characters }) => `This ${what} of ${(characters / 1e6).toFixed(0)} MB is too long to be shown; it is kept in the notebook's file.`;

/** Memory as a reader says it: 312 MB, 3.0 GB. */
export const memory = (bytes) => bytes < 2 ** 30 ? `${Math.round(bytes / 2 ** 20)} MB` : `${(bytes / 2 ** 30).toFixed(1)} GB`;

export const words = Object.freeze({
  workOut: "Work out",
  stop: "Stop",
  workOutStep: "Work out this step",
  workOutToHere: "Work out down to here",
  everything: "everything",
  workOutKey: "Also Control or Command with Enter, in the field",
  undoKey: "Also Control or Command with Z, outside a field",
  redoKey: "Also Control or Command with Shift and Z, outside a field",
  startAfresh: "Start afresh",
  startAfreshAbout: "Forgets every value worked out so far. Steps and their answers stay.",
  rights: "Code in a step runs with your own rights on this computer.",
  again: "Work out everything again, from the top",
  lost: "The program no longer answers; this page keeps trying. What you typed until then is kept. If the program has ended, start it again: it prints a new address.",
  noSteps: "This notebook has no steps yet.",
  beginWithCode: "Add a step",
  beginWithText: "Add text",
  preview: "Preview. The full answer is being worked out.",
  nothingToShow: "Worked out; this step has no answer to show.",
  noEditor: "The field for code could not be loaded; close the working and open it again.",
  atOnce: "Work out at once",
  assumptionsAbout: "Changing one makes the answers that use it out of date until they are worked out again. Not financial or tax advice.",
  asksForInput: "This step waits for a line of text:",
  giveInput: "Give it",
  wholeScreen: "Whole screen",
  backToPage: "Back to the page",
  showAll: "Show all",
  showLess: "Show the beginning only",
  keepText: "Keep as text",
  keepPicture: "Keep as picture",
  keepDrawing: "Keep as drawing",
  keepTable: "Keep as CSV",
  copyTable: "Copy as CSV",
  copied: "Copied.",
  allRows: "All rows",
  findInTable: "Find in this table",
  rowsBefore: "Rows before",
  rowsAfter: "Rows after",
  rowName: "row",
  readingRows: "Reading …",
  nothingFound: "No row holds this.",
  fromElsewhere: "This notebook comes from elsewhere: nobody has let its code run on this computer. You see the answers that were saved in it. Code in a step has your own rights here, over your files too.",
  letRun: "Let its code run",
  versions: "Earlier versions",
  noVersions: "None yet. One is kept for every ten minutes of work, for two weeks.",
  answersOut: "Leave answers out of the file",
  answersIn: "Save answers in the file",
  keepCopy: "Keep a copy of the notebook",
  report: "Keep a report",
  noShelf: "No notebook was found here. Start the program with the name of one.",
});
