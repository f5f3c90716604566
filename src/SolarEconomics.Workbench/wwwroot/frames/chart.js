// chart.js: draws the figures that the page hands in by message. Runs in a frame with an origin of its own; reaches nothing else.
"use strict";
(() => {
  const font = [...document.styleSheets[0].cssRules].find((rule) => rule instanceof CSSFontFaceRule).cssText;

  /** A figure of somebody else's has no colours of ours to exchange; on dark paper its text must still be read. */
  const readable = ({ figure, ink }) => figure.layout?.meta?.tokens ? figure : {
    ...figure,
    layout: { ...figure.layout, paper_bgcolor: "rgba(0,0,0,0)", plot_bgcolor: "rgba(0,0,0,0)", font: { ...figure.layout?.font, color: ink, family: '"Reading", sans-serif' } },
  };

  async function svgOf(request) {
    await document.fonts.load('16px "Reading"');
    return solarChart.picture(readable(request), request.look, "svg", request.width, request.height, font);
  }

  /** Twice as many pixels as the drawing has: its text is then large enough for a video of 1920 × 1080. */
  async function pixelsOf(address, { width, height, paper }) {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = Object.assign(document.createElement("canvas"), { width: width * 2, height: height * 2 });
    const pen = canvas.getContext("2d");
    pen.fillStyle = paper;
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    return canvas.toDataURL("image/png");
  }

  const answers = {
    svg: svgOf,
    png: async (request) => pixelsOf(await svgOf(request), request),
    async live(request) {
      const figure = readable(request);
      const layout = { ...figure.layout, width: request.width, height: request.height, autosize: false };
      await solarChart.draw("live", { ...figure, layout, config: { ...figure.config, responsive: false, displayModeBar: false } }, request.look);
      return "";
    },
  };

  const say = (content) => parent.postMessage(content, "*");
  window.addEventListener("message", async (event) => {
    if (event.source !== parent) return;
    const request = event.data;
    try {
      say({ id: request.id, address: await answers[request.kind](request) });
    } catch (failure) {
      say({ id: request.id, failed: String(failure.message ?? failure) });
    }
  });
  document.documentElement.addEventListener("mouseleave", () => say({ left: true }));
  say({ ready: true });
})();
