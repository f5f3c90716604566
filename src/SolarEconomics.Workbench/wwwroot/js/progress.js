// progress.js: how far the step at work is, told where it stands.
import { element } from "./dom.js";
import { soFar } from "./words.js";

export function createProgress(document) {
  const bar = element(document, "progress", { max: 1, "aria-label": "Progress of this step" });
  const said = element(document, "span");
  const root = element(document, "p.progress", { hidden: true }, bar, said);
  return {
    root,
    /** @param {{share: number|null, stepSecondsLeft: number|null}|null} work what the host tells of the step at work; null for any other step */
    update(work) {
      const tells = typeof work?.share === "number";
      root.hidden = !tells;
      if (!tells) return;
      bar.value = work.share;
      said.textContent = soFar(work.share, work.stepSecondsLeft);
    },
  };
}
