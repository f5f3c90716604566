// drawing.js: the one frame that draws charts. Figures go in by message, pictures come back; on the pointer it lies over a chart and shows its values.

export function createDrawing(window, place) {
  const { document } = window;
  const frame = document.createElement("iframe");
  frame.className = "drawing";
  frame.title = "Chart under the pointer";
  frame.tabIndex = -1;
  frame.setAttribute("aria-hidden", "true");
  frame.setAttribute("sandbox", "allow-scripts");
  const waiting = new Map();
  let count = 0;
  let isReady;
  const ready = new Promise((resolve) => { isReady = resolve; });

  window.addEventListener("message", (event) => {
    if (event.source !== frame.contentWindow) return;
    const { id, ready: started, left, failed, ...result } = event.data;
    if (started) isReady();
    else if (left) hide();
    else if (failed) settle(id, (promise) => promise.reject(new Error(failed)));
    else settle(id, (promise) => promise.resolve(result));
  });

  function settle(id, how) {
    const promise = waiting.get(id);
    waiting.delete(id);
    if (promise) how(promise);
  }

  async function request(kind, content) {
    if (!frame.isConnected) {
      frame.src = "frames/chart.html";
      place.append(frame);
    }
    await ready;
    const id = ++count;
    const answered = new Promise((resolve, reject) => waiting.set(id, { resolve, reject }));
    frame.contentWindow.postMessage({ id, kind, ...content }, "*");
    return answered;
  }

  function hide() {
    frame.classList.remove("live");
    frame.removeAttribute("style");
  }

  // Where everything moved, the frame would lie over something else and take its clicks.
  document.addEventListener("fullscreenchange", hide);
  new window.ResizeObserver(hide).observe(place);

  return {
    /** Makes a picture, "svg" or "png". @returns {Promise<{address: string}>} */
    draw: (format, content) => request(format, content),
    /** Lays the frame over an element and draws the figure there, live. */
    async over(stage, content) {
      await request("live", content);
      if (!stage.isConnected || !stage.matches(":hover") || document.fullscreenElement) return;
      const box = stage.getBoundingClientRect();
      const home = place.getBoundingClientRect();
      Object.assign(frame.style, {
        width: `${content.width}px`, height: `${content.height}px`, left: `${box.left - home.left}px`, top: `${box.top - home.top}px`,
        transform: `scale(${box.width / content.width})`,
      });
      frame.classList.add("live");
    },
    hide,
  };
}
