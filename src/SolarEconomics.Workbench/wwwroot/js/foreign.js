// foreign.js: shows HTML that a step made, in a frame of its own that reaches neither page, session nor network.
import { element } from "./dom.js";

export function foreign(document, html) {
  const frame = element(document, "iframe.foreign", { sandbox: "allow-scripts", src: "frames/foreign.html", title: "Output of this step", height: "60" });
  const view = document.defaultView;
  let wasShown = false;
  function hear(event) {
    wasShown ||= frame.isConnected;
    if (wasShown && !frame.isConnected) view.removeEventListener("message", hear);
    if (event.source === null || event.source !== frame.contentWindow) return;
    if (event.data.ready) frame.contentWindow.postMessage({ html }, "*");
    else if (Number.isFinite(event.data.height)) frame.height = String(Math.min(event.data.height + 2, 900));
  }
  view.addEventListener("message", hear);
  return frame;
}
