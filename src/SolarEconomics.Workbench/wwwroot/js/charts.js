// charts.js: a chart on a card: drawn when it comes into sight, live under the pointer, with its words, its values and its picture.
import { button, element } from "./dom.js";
import { csvOf } from "./rows.js";
import { createTurns } from "./turns.js";
import { words } from "./words.js";
import { lookOf, onLookChange } from "./theme.js";

export function createCharts(window, drawing, means) {
  const { document } = window;
  const shown = new Map();
  const inTurn = createTurns(window, draw);
  const sight = new window.IntersectionObserver((entries) => {
    for (const entry of entries) if (entry.isIntersecting) inTurn.add(entry.target); else inTurn.leave(entry.target);
  }, { rootMargin: "400px" });
  const resized = new window.ResizeObserver((entries) => {
    for (const entry of entries) if (Math.abs((shown.get(entry.target)?.width ?? 0) - entry.contentRect.width) > 8) renew(entry.target);
  });
  onLookChange(window, () => [...shown.keys()].forEach(renew));

  // A chart is drawn between these widths and scaled from there, so that its text neither crowds on a phone nor shrinks before an audience.
  const size = (width) => {
    const drawn = Math.round(Math.max(480, Math.min(width, 960)));
    return { width: drawn, height: Math.round(drawn < 600 ? drawn * 0.75 : drawn * 0.5) };
  };

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
      const { address } = await drawing.draw("svg", { figure: chart.figure, ...size(width), ...lookOf(window) });
      stage.replaceChildren(element(document, "img", { src: address, alt: chart.alt }));
    } catch (failure) {
      stage.replaceChildren(element(document, "p.blank", {}, `This chart could not be drawn: ${failure.message}`));
    }
  }

  async function live(stage) {
    const chart = shown.get(stage);
    const image = stage.querySelector("img");
    if (chart && image) await drawing.over(stage, { figure: chart.figure, ...size(stage.clientWidth), ...lookOf(window) });
  }

  async function download(chart, format) {
    const { address } = await drawing.draw(format, { figure: chart.figure, width: 960, height: 540, ...lookOf(window) });
    element(document, "a", { href: address, download: `${chart.name}.${format}` }).click();
  }

  return {
    /** @param {{figure: object, name: string, alt: string}} chart @param {Element|null} before the picture of the last answer @param {Element} said what stands under it */
    figure(chart, before, said) {
      const stage = element(document, "div.stage", { onpointerenter: () => live(stage) }, before ?? element(document, "p.blank", {}, "Drawing …"));
      const picture = (format, label) => button(document, label, () => download(chart, format), { class: "plain" });
      shown.set(stage, { ...chart, width: 0 });
      sight.observe(stage);
      resized.observe(stage);
      const numbers = chart.finding?.tables.at(-1);
      const root = element(document, "figure.chart", {}, stage, element(document, "figcaption", {}, said, element(document, "span.keep", {},
        picture("png", words.keepPicture), picture("svg", words.keepDrawing),
        numbers ? button(document, words.keepTable, () => means.download(`${chart.name}.csv`, csvOf(numbers.columns, numbers.rows), "text/csv"), { class: "plain" }) : null,
        means.wholeScreen(() => root))));
      return root;
    },
    /** Forgets the charts inside an element that is about to be taken away. @returns {Array<Element>} their pictures */
    forget(place) {
      const stages = [...place.querySelectorAll(".stage")];
      for (const stage of stages) {
        shown.delete(stage);
        inTurn.leave(stage);
        sight.unobserve(stage);
        resized.unobserve(stage);
      }
      if (stages.length > 0) drawing.hide();
      return stages.map((stage) => stage.querySelector("img")).filter(Boolean);
    },
  };
}
