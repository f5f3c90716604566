import assert from "node:assert/strict";
import { test } from "node:test";
import { connect } from "../../src/SolarEconomics.Workbench/wwwroot/js/connection.js";

function make() {
  const sockets = [], heard = [], line = [], waits = [];
  const connection = connect({
    open: () => { const socket = { readyState: 0, sent: [], send(text) { this.sent.push(text); } }; sockets.push(socket); return socket; },
    hear: (message) => heard.push(message),
    lineChanged: (up) => line.push(up),
    later: (act, ms) => { waits.push(ms); act(); },
  });
  return { connection, sockets, heard, line, waits };
}

test("a message carries its name and content", () => {
  const { connection, sockets } = make();
  sockets[0].readyState = 1;
  assert.equal(connection.send("editStep", { step: "a", text: "1" }), true);
  assert.deepEqual(JSON.parse(sockets[0].sent[0]), { message: "editStep", step: "a", text: "1" });
});

test("while the line is down nothing is sent, and the sender is told", () => {
  const { connection, sockets } = make();
  assert.equal(connection.send("save"), false);
  assert.deepEqual(sockets[0].sent, []);
});

test("a dropped line is dialled again, with growing waits, and starts small after it was up", () => {
  const { sockets, line, waits } = make();
  sockets[0].onclose({ code: 1006 });
  sockets[1].onclose({ code: 1006 });
  sockets[2].onopen();
  sockets[2].onclose({ code: 1006 });
  assert.deepEqual(waits, [250, 500, 250]);
  assert.deepEqual(line, [false, false, true, false]);
});

test("when the host says there is nothing here, the line is left alone", () => {
  const { sockets, waits } = make();
  sockets[0].onclose({ code: 4004 });
  assert.deepEqual(waits, []);
});
