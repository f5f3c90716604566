// presenting.js: shows one answer at a time, large, for an audience. Arrow keys go on and back; Escape ends it.

export function createPresenting(window, main, acts) {
  const { document } = window;
  let at = 0;

  const cards = () => [...main.querySelectorAll(".step")].filter((card) => card.querySelector(".finding, .chart, .picture"));

  function show(next) {
    const all = cards();
    at = Math.max(0, Math.min(next, all.length - 1));
    all.forEach((card, index) => card.classList.toggle("shown", index === at));
    main.focus();
  }

  function toggle() {
    const on = document.body.classList.toggle("presenting");
    acts.querySelector("#present").setAttribute("aria-pressed", String(on));
    acts.querySelector("#present").textContent = on ? "Back to reading" : "Present";
    const middle = window.innerHeight / 2;
    if (on) show(Math.max(0, cards().findIndex((card) => card.getBoundingClientRect().bottom > middle)));
    else cards()[at]?.scrollIntoView();
  }

  document.addEventListener("keydown", (event) => {
    if (!document.body.classList.contains("presenting") || event.target.closest("input, textarea, .cm-editor, button, summary")) return;
    const by = { ArrowRight: 1, PageDown: 1, ArrowLeft: -1, PageUp: -1 }[event.key];
    if (by) { event.preventDefault(); show(at + by); }
    else if (event.key === "Escape") toggle();
  });
  return { toggle };
}
