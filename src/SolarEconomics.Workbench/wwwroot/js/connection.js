// connection.js: the only module that talks to the host. Reconnects after sleep or a lost line; the host then tells everything anew.

/** The host closes with this number when there is no such notebook: coming back is of no use. */
const nothingHere = 4004;

/**
 * @param {{open: () => WebSocket, hear: (message: object) => void, lineChanged: (up: boolean) => void, later: (act: () => void, ms: number) => void}} parts
 */
export function connect({ open, hear, lineChanged, later }) {
  let socket = null;
  let wait = 250;

  function dial() {
    socket = open();
    socket.onopen = () => { wait = 250; lineChanged(true); };
    socket.onmessage = (event) => hear(JSON.parse(event.data));
    socket.onclose = (event) => {
      if (event.code === nothingHere) return;
      lineChanged(false);
      later(dial, wait);
      wait = Math.min(wait * 2, 5000);
    };
  }

  dial();
  return {
    /** Sends one message; false when the line is down, so that the caller can keep what was typed. */
    send(name, content = {}) {
      if (socket.readyState !== 1) return false;
      socket.send(JSON.stringify({ ...content, message: name }));
      return true;
    },
  };
}
