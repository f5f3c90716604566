// Prints the licence of every package that ends up in wwwroot, with its full text.
import { existsSync, readdirSync, readFileSync } from "node:fs";

const bundled = /^(@codemirror|@lezer|@marijn|@fontsource-variable|crelt$|style-mod$|w3c-keyname$|katex$)/;
const folders = readdirSync("node_modules").flatMap((name) =>
  name.startsWith("@") ? readdirSync(`node_modules/${name}`).map((inner) => `${name}/${inner}`) : [name]);

console.log("# Outside work in this folder and in ../fonts\n\nWritten by Bundles/rebuild; do not edit by hand.");
for (const name of folders.filter((folder) => bundled.test(folder)).sort()) {
  const about = JSON.parse(readFileSync(`node_modules/${name}/package.json`, "utf8"));
  const file = ["LICENSE", "LICENSE.md", "LICENSE.txt"].map((f) => `node_modules/${name}/${f}`).find(existsSync);
  console.log(`\n## ${name} ${about.version} (${about.license})\n`);
  console.log(file ? "```text\n" + readFileSync(file, "utf8").trim() + "\n```" : "The licence text is in the bundle's first lines.");
}
