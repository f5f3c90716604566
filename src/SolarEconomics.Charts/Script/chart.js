// chart.js: puts a figure (plotly data, layout, config) on a page. Needs Plotly; asks nothing of a network.
(function (root) {
  "use strict";

  // Every colour of a figure is a token of its look; within a look all differ, so exchanging them recolours the figure.
  function recolour(figure, look) {
    const meta = figure.layout && figure.layout.meta;
    if (!meta || !meta.tokens || meta.look === look) return figure;
    const other = new Map(Object.values(meta.tokens).map(t => [t[meta.look], t[look]]));
    const text = JSON.stringify({ data: figure.data, layout: { ...figure.layout, meta: undefined }, config: figure.config });
    const result = JSON.parse(text.replace(/#[0-9a-f]{6}\b/gi, c => other.get(c.toLowerCase()) || c));
    result.layout.meta = { ...meta, look };
    return result;
  }

  function draw(element, figure, look) {
    const f = recolour(figure, look);
    return root.Plotly.react(element, f.data, f.layout, f.config);
  }

  // A picture as a data address: format is "png" or "svg". A picture cannot see the page's typefaces, so their rule is put into it.
  async function picture(figure, look, format, width, height, fontRule) {
    const f = recolour(figure, look);
    const drawn = { data: f.data, layout: { ...f.layout, autosize: false, width, height }, config: f.config };
    const svg = (await root.Plotly.toImage(drawn, { format: "svg", width, height, imageDataOnly: true }))
      .replace(/<svg[^>]*>/, start => start + "<style>" + fontRule + "</style>");
    const address = "data:image/svg+xml;charset=utf-8," + encodeURIComponent(svg);
    if (format === "svg") return address;
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = Object.assign(document.createElement("canvas"), { width, height });
    canvas.getContext("2d").drawImage(image, 0, 0, width, height);
    return canvas.toDataURL("image/png");
  }

  root.solarChart = { draw, recolour, picture };
})(globalThis);
