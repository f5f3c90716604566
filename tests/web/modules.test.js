// What holds for every module of the page: small, no import cycle, no globals where a document is passed in, no label without a word.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

const folder = new URL("../../src/SolarEconomics.Workbench/wwwroot/js/", import.meta.url);
const modules = new Map(readdirSync(folder).map((name) => [name, readFileSync(new URL(name, folder), "utf8")]));
const importsOf = (text) => [...text.matchAll(/from "\.\/([\w.-]+)"/g)].map((match) => match[1]);

test("every module says on its first line what it does, and stays under 150 lines", () => {
  for (const [name, text] of modules) {
    assert.ok(text.startsWith(`// ${name}: `), name);
    assert.ok(text.split("\n").length < 150, name);
  }
});

test("no module imports itself through others", () => {
  const visit = (name, path) => {
    assert.ok(!path.includes(name), [...path, name].join(" → "));
    for (const next of importsOf(modules.get(name))) visit(next, [...path, name]);
  };
  for (const name of modules.keys()) visit(name, []);
});

test("only main.js takes document and window from the air", () => {
  for (const [name, text] of modules) {
    if (name === "main.js") continue;
    const taken = /(?<![.\w])(document|window)\b/.test(text);
    const passed = /\b(document|window)\b[^;]*?[)}]\s*(=>|\{|=)|const \{ document \} = window|\((document|window)[,)]/.test(text);
    assert.ok(!taken || passed, `${name} uses document or window without being passed it`);
  }
});

test("only connection.js writes to the host's line", () => {
  for (const [name, text] of modules) if (name !== "connection.js") assert.ok(!/socket\.send\(/.test(text), name);
});

test("nothing is loaded from elsewhere", () => {
  for (const [name, text] of modules) assert.ok(!/https?:\/\/(?!www\.w3\.org)/.test(text), name);
});

test("imports and exports are written so that the host can join the modules to one script", () => {
  for (const [name, text] of modules) {
    if (name === "editor.js") continue; // loaded later, as a file of its own
    for (const [line] of text.matchAll(/^import .*$/gm)) {
      assert.match(line, /^import \{ [\w, ]+ \} from "\.\/[\w.-]+";$/, name);
      assert.doesNotMatch(line, / as /, name);
    }
    for (const [line] of text.matchAll(/^export .*$/gm)) assert.match(line, /^export (async function|function|const) \w+/, name);
  }
});
