// dom.js: builds elements. Text always goes in as text, never as markup.

/**
 * @param {Document} document
 * @param {string} tag element name, with classes after dots: "p.quiet"
 * @param {object} [attributes] attributes; a function under "onclick" and the like listens; null and false are left out
 * @param {...(Node|string|null)} children
 */
export function element(document, tag, attributes = {}, ...children) {
  const [name, ...classes] = tag.split(".");
  const made = document.createElement(name);
  if (classes.length > 0) made.className = classes.join(" ");
  for (const [key, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (key.startsWith("on")) made.addEventListener(key.slice(2), value);
    else made.setAttribute(key, value === true ? "" : value);
  }
  made.append(...children.filter((child) => child !== null && child !== undefined));
  return made;
}

/** Sets a property where it is another one. */
export function put(place, property, value) {
  if (place[property] !== value) place[property] = value;
}

/** A button with a word on it, always. */
export const button = (document, label, act, attributes = {}) =>
  element(document, "button", { type: "button", onclick: act, ...attributes }, label);
