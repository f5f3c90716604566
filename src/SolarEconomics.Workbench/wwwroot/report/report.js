// report.js: draws the charts of an exported page from the figures that stand beside them.
"use strict";
(() => {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const charts = [...document.querySelectorAll(".chart")].map((chart) => ({
    place: chart.querySelector("div"), figure: JSON.parse(chart.querySelector("script").textContent),
  }));
  const show = (look) => charts.forEach(({ place, figure }) => solarChart.draw(place, figure, look));
  const now = () => show(dark.matches ? "dark" : "light");
  dark.addEventListener("change", now);
  addEventListener("beforeprint", () => show("light"));
  addEventListener("afterprint", now);
  document.fonts.load("16px Reading").finally(now);
})();
