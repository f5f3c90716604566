// chart.js: draws the figures that the page hands in by message. Runs in a frame with an origin of its own; reaches nothing else.
"use strict";
(() => {
  const font = [...document.styleSheets[0].cssRules].find((rule) => rule instanceof CSSFontFaceRule).cssText;

  /** The figure in the reader's look and in the size of its place. */
  function sized({ figure, look, ink, width, height, textSize }) {
    const { data, layout } = solarChart.recolour(figure, look);
    const text = { ...layout.font, family: '"Reading", sans-serif', color: figure.layout?.meta?.tokens ? layout.font?.color : ink };
    if (textSize) text.size = textSize;
    const clear = { paper_bgcolor: "rgba(0,0,0,0)", plot_bgcolor: "rgba(0,0,0,0)" };
    return { data, layout: { ...layout, ...clear, width, height, autosize: false, font: text }, config: { displayModeBar: false, responsive: false } };
  }

  async function svgOf(request) {
    await document.fonts.load('16px "Reading"');
    const { width, height } = request;
    const address = await Plotly.toImage(sized(request), { format: "svg", width, height });
    const svg = decodeURIComponent(address.slice(address.indexOf(",") + 1));
    return svg.replace(/<svg[^>]*>/, (open) => `${open}<defs><style>${font}</style></defs>`);
  }

  async function pixelsOf(svg, { width, height, paper }) {
    const image = new Image(width, height);
    image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
    await image.decode();
    const canvas = Object.assign(document.createElement("canvas"), { width, height });
    const pen = canvas.getContext("2d");
    pen.fillStyle = paper;
    pen.fillRect(0, 0, width, height);
    pen.drawImage(image, 0, 0, width, height);
    return canvas.toDataURL("image/png");
  }

  const answers = {
    svg: async (request) => ({ svg: await svgOf(request) }),
    png: async (request) => ({ png: await pixelsOf(await svgOf(request), request) }),
    async live(request) {
      const { data, layout, config } = sized(request);
      await Plotly.react("live", data, layout, config);
      return {};
    },
  };

  const say = (content) => parent.postMessage(content, "*");
  window.addEventListener("message", async (event) => {
    if (event.source !== parent) return;
    const request = event.data;
    try {
      say({ id: request.id, ...await answers[request.kind](request) });
    } catch (failure) {
      say({ id: request.id, failed: String(failure.message ?? failure) });
    }
  });
  document.documentElement.addEventListener("mouseleave", () => say({ left: true }));
  say({ ready: true });
})();
