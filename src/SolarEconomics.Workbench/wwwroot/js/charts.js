// charts.js: a chart on a card: drawn when it comes into sight, live under the pointer, with its words, its values and its picture.
import { button, element } from "./dom.js";
import { lookOf, onLookChange } from "./theme.js";
import { valuesOf } from "./values.js";
import { sheet } from "./sheet.js";

export function createCharts(window, drawing) {
  const { document } = window;
  const shown = new Map();
  const sight = new window.IntersectionObserver((entries) => {
    for (const entry of entries) if (entry.isIntersecting) draw(entry.target);
  }, { rootMargin: "400px" });
  const resized = new window.ResizeObserver((entries) => {
    for (const entry of entries) if (Math.abs((shown.get(entry.target)?.width ?? 0) - entry.contentRect.width) > 8) renew(entry.target);
  });
  onLookChange(window, () => [...shown.keys()].forEach(renew));

  const size = (width) => ({ width: Math.round(width), height: Math.round(width < 560 ? width * 0.82 : Math.min(width * 0.5, 520)) });

  function renew(stage) {
    const chart = shown.get(stage);
    if (!chart) return;
    chart.width = 0;
    sight.unobserve(stage);
    sight.observe(stage);
  }

  async function draw(stage) {
    const chart = shown.get(stage);
    const width = stage.clientWidth;
    if (!chart || chart.width === width || width === 0) return;
    chart.width = width;
    try {
      const { svg } = await drawing.draw("svg", { figure: chart.figure, ...size(width), ...lookOf(window) });
      const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
      const image = element(document, "img", { src: address, alt: chart.words || "Chart", onload: () => URL.revokeObjectURL(address) });
      stage.replaceChildren(image);
    } catch (failure) {
      stage.replaceChildren(element(document, "p.blank", {}, `This chart could not be drawn: ${failure.message}`));
    }
  }

  async function live(stage) {
    const chart = shown.get(stage);
    const image = stage.querySelector("img");
    if (chart && image) await drawing.over(stage, { figure: chart.figure, width: stage.clientWidth, height: image.clientHeight, ...lookOf(window) });
  }

  async function download(chart, format) {
    const made = await drawing.draw(format, { figure: chart.figure, width: 1920, height: 1080, textSize: 28, ...lookOf(window) });
    const address = made.png ?? URL.createObjectURL(new Blob([made.svg], { type: "image/svg+xml" }));
    element(document, "a", { href: address, download: `chart.${format}` }).click();
  }

  return {
    /** @param {{figure: object, words: string}} answer */
    figure(answer) {
      const chart = { figure: answer.figure, words: answer.words, width: 0 };
      const stage = element(document, "div.stage", { onpointerenter: () => live(stage) }, element(document, "p.blank", {}, "Drawing …"));
      const table = element(document, "div", { hidden: true });
      const values = button(document, "Values", () => {
        if (!table.firstChild) table.append(...valuesOf(chart.figure).map((one) => sheet(document, one)));
        table.hidden = !table.hidden;
        values.setAttribute("aria-expanded", String(!table.hidden));
      }, { class: "plain", "aria-expanded": "false" });
      shown.set(stage, chart);
      sight.observe(stage);
      resized.observe(stage);
      return element(document, "figure.chart", {}, stage, element(document, "figcaption", {}, answer.words ? `${answer.words} ` : null, values,
        button(document, "Picture", () => download(chart, "png"), { class: "plain", title: "1920 × 1080 pixels" }),
        button(document, "Drawing (SVG)", () => download(chart, "svg"), { class: "plain" })), table);
    },
    /** Forgets the charts inside an element that is about to be taken away. */
    forget(place) {
      for (const stage of place.querySelectorAll(".stage")) {
        shown.delete(stage);
        sight.unobserve(stage);
        resized.unobserve(stage);
      }
      drawing.hide();
    },
  };
}
