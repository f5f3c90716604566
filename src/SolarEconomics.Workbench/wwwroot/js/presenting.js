// presenting.js: shows one answer at a time, large, for an audience. Arrow keys go on and back; Escape ends it.

export function createPresenting(window, main, acts) {
  const { document } = window;
  let at = 0;

  const answers = () => [...main.querySelectorAll(".step > .part")].filter((part) => part.querySelector(".finding, .chart, .picture"));

  /** One answer on its card; the text of the card stands with its first one. */
  function show(next) {
    const all = answers();
    at = Math.max(0, Math.min(next, all.length - 1));
    for (const shown of main.querySelectorAll(".shown")) shown.classList.remove("shown");
    const card = all[at]?.parentElement;
    if (!card) return;
    card.classList.add("shown");
    all[at].classList.add("shown");
    if (all[at - 1]?.parentElement !== card) for (const text of card.querySelectorAll(".part.text")) text.classList.add("shown");
    main.focus();
    window.scrollTo(0, 0);
  }

  function toggle() {
    const middle = window.innerHeight / 2;
    const now = answers().findIndex((part) => part.getBoundingClientRect().bottom > middle);
    const on = document.documentElement.classList.toggle("presenting");
    acts.querySelector("#present").setAttribute("aria-pressed", String(on));
    acts.querySelector("#present").textContent = on ? "Back to reading" : "Present";
    if (on) show(Math.max(0, now));
    else answers()[at]?.scrollIntoView({ block: "center" });
  }

  document.addEventListener("keydown", (event) => {
    if (!document.documentElement.classList.contains("presenting") || event.target.closest("input, textarea, .cm-editor, button, summary")) return;
    const by = { ArrowRight: 1, PageDown: 1, ArrowLeft: -1, PageUp: -1 }[event.key];
    if (by) { event.preventDefault(); show(at + by); }
    else if (event.key === "Escape") toggle();
  });
  return { toggle };
}
