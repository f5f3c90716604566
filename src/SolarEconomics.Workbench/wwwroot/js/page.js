// page.js: an open notebook: what the host tells goes to the state, what changed in the state is drawn.
import { connect } from "./connection.js";
import { createState, replaceStep } from "./state.js";
import { ask, told } from "./messages.js";
import { words } from "./words.js";
import { createActs } from "./acts.js";
import { createAnswers } from "./answer.js";
import { createAsking } from "./asking.js";
import { createAssumptions } from "./assumptions.js";
import { createCard } from "./card.js";
import { createChoices } from "./choices.js";
import { createCharts } from "./charts.js";
import { createCompletions } from "./completions.js";
import { createDrawing } from "./drawing.js";
import { createEdits } from "./edits.js";
import { createMeans } from "./means.js";
import { createNotebook } from "./notebook.js";
import { createNotice } from "./notice.js";
import { createPart } from "./part.js";
import { createPresenting } from "./presenting.js";
import { createProse } from "./prose.js";
import { createTools } from "./tools.js";
import { createVersions } from "./versions.js";
import { nothingYet } from "./empty.js";

export function openPage(window, name) {
  const { document } = window;
  const at = (id) => document.getElementById(id);
  const later = (act, ms) => window.setTimeout(act, ms);
  const main = at("answers");
  const state = createState();
  const notice = createNotice(document, at("notice"));
  // The first answers are shown without them: the line to the host, and the field for code, which is ten times all other scripts.
  // What is asked before the line is there waits for it.
  const early = [];
  let line = { send: (...message) => early.push(message) > 0 };
  const editorModule = () => import("./editor.js");

  const edits = createEdits({ later, cancel: (timer) => window.clearTimeout(timer), send: (step, text) => line.send(ask.editStep, { step, text }) });
  function say(message, content) {
    edits.flush();
    const sent = line.send(message, content);
    if (!sent) notice.show(words.lost);
    return sent;
  }

  const drawing = createDrawing(window, main);
  const means = createMeans(window);
  const charts = createCharts(window, drawing, means);
  const answers = createAnswers(document, charts, { notebook: name, fetch: (address) => window.fetch(address), means });
  const completions = createCompletions((message, content) => line.send(message, content), later);
  const tools = createTools(document, say, means);
  const nonce = document.querySelector('meta[name="editor-nonce"]').content;
  const presenting = createPresenting(window, main, at("acts"));
  const choices = createChoices(document, at("choices"), say);
  const versions = createVersions(document, say);
  const addressOf = (what) => `${what}?notebook=${encodeURIComponent(name)}`;
  const acts = createActs(document, at("acts"), { say, present: () => presenting.toggle(), versions: versions.parts, addressOf });
  const assumptions = createAssumptions(document, at("assume"), say, later);
  const notebook = createNotebook(document, {
    main, outline: at("outline"), card: createCard(document), empty: nothingYet(document, say), frame: () => main.querySelector(".drawing"),
    part: createPart(document, { answers, asking: createAsking(document, say), edits, tools, say, complete: completions.ask, nonce, editorModule }),
    prose: createProse(document, { edits, tools }),
  });

  state.listen((kind, now, changed) => {
    if (!now.notebook) return;
    const { question, place: file, steps, saved } = now.notebook;
    if (kind === told.opened) {
      at("question").textContent = question;
      at("place").textContent = file;
      document.title = question;
      if (now.connected) notice.clear();
    }
    if (kind === told.opened) notebook.render(steps);
    if (kind === told.stepChanged) notebook.change(changed, steps);
    if (kind === told.opened || kind === told.assumptionsChanged) assumptions.render(now.notebook.assumptions);
    if (kind === told.opened || kind === told.saved) at("saved").textContent = saved;
    if (kind === told.opened || kind === told.workChanged) notebook.progress(now.notebook.work);
    acts.render(now.notebook);
    if (now.notebook.mayRun) assumptions.goOn(now.notebook);
    if (kind !== told.opened) return;
    choices.render(now.notebook);
    const isElsewhere = Boolean(now.notebook.offer?.isShown);
    for (const place of main.querySelectorAll(".code, .tools, .writing")) place.inert = isElsewhere;
  });

  const heard = {
    [told.opened]: (s, message) => { s.notebook = message.notebook; },
    [told.stepChanged]: (s, { step }) => { replaceStep(s.notebook, step); },
    [told.workChanged]: (s, { work }) => { s.notebook.work = work; },
    [told.assumptionsChanged]: (s, message) => { s.notebook.assumptions = message.assumptions; },
    [told.saved]: (s, { words: saying }) => { s.notebook.saved = saying; },
    [told.sessionChanged]: (s, { session }) => { s.notebook.session = session; },
  };

  function hear(message) {
    if (message.message === told.completed) completions.answer(message);
    else if (message.message === told.versionsFound) versions.render(message.versions);
    else if (message.message === told.notice) notice.show(message.words);
    else if (heard[message.message]) state.change(message.message, (s) => heard[message.message](s, message), message.step);
  }

  const begin = () => {
    let has = sent.mark;
    const connection = connect({
      open: () => {
        const address = `ws://${window.location.host}/${addressOf("talk")}&have=${has}`;
        // What came with the page is of use once: a line that was lost may have missed something.
        has = "";
        return new WebSocket(address);
      },
      later,
      lineChanged: (up) => {
        state.change("line", (s) => { s.connected = up; });
        if (!up) { notice.show(words.lost); return; }
        line = connection;
        for (const message of early.splice(0)) line.send(...message);
        edits.flush();
      },
      hear,
    });
    later(editorModule, 600);
  };
  const sent = firstLook(at("opened"));
  if (sent.message) hear(sent.message);
  // A frame is painted, then the conversation begins; a page in the background paints none.
  if (document.hidden) begin(); else window.requestAnimationFrame(() => later(begin, 0));
}

/** What the host sent along with the page: everything as it stood then. */
function firstLook(place) {
  const { textContent: text, dataset: { mark } } = place;
  place.remove();
  return text ? { message: JSON.parse(text), mark } : { message: null, mark: "" };
}
