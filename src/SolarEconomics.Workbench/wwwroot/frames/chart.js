// chart.js: draws the figures that the page hands in by message. Runs in a frame with an origin of its own; reaches nothing else.
"use strict";
(() => {
  const font = [...document.styleSheets[0].cssRules].find((rule) => rule.type === CSSRule.FONT_FACE_RULE).cssText;
  const still = { displayModeBar: false, responsive: false, displaylogo: false };

  /** The figure in the reader's colours: every colour that equals a token of the light look becomes the same token of the current look. */
  function recolour(value, map) {
    if (typeof value === "string") return map[value.toLowerCase()] ?? value;
    if (Array.isArray(value)) return value.map((item) => recolour(item, map));
    if (value && typeof value === "object") return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, recolour(item, map)]));
    return value;
  }

  function sized({ figure, width, height, colours, fontSize }) {
    const drawn = recolour(figure, colours.map);
    const layout = { ...drawn.layout, width, height, autosize: false, paper_bgcolor: "rgba(0,0,0,0)", plot_bgcolor: "rgba(0,0,0,0)" };
    layout.font = { ...layout.font, family: '"Reading", sans-serif', color: colours.ink };
    if (fontSize) layout.font.size = fontSize;
    layout.hoverlabel = { ...layout.hoverlabel, bgcolor: colours.ink, bordercolor: colours.ink, font: { family: '"Reading", sans-serif', color: colours.card } };
    return { data: drawn.data, layout, config: still };
  }

  async function picture(request) {
    await document.fonts.load('16px "Reading"');
    const size = { width: request.width, height: request.height };
    const address = await Plotly.toImage(sized(request), { format: "svg", ...size });
    const svg = decodeURIComponent(address.slice(address.indexOf(",") + 1)).replace(/(<svg[^>]*>)/, `$1<defs><style>${font}</style></defs>`);
    return request.format === "png" ? { png: await pixels(svg, size, request.paper) } : { svg };
  }

  async function pixels(svg, { width, height }, paper) {
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

  async function live(request) {
    await Plotly.react("live", sized(request));
    return {};
  }

  const say = (content) => parent.postMessage(content, "*");
  window.addEventListener("message", async (event) => {
    if (event.source !== parent) return;
    const request = event.data;
    try {
      say({ id: request.id, ...(request.kind === "live" ? await live(request) : await picture(request)) });
    } catch (failure) {
      say({ id: request.id, failed: String(failure.message ?? failure) });
    }
  });
  document.documentElement.addEventListener("mouseleave", () => say({ left: true }));
  say({ ready: true });
})();
