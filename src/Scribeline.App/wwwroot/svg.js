// Elements of a drawing, made one way by every script that draws.
"use strict";
const svgElement = (name, kind, parent, set = {}) => {
  const made = document.createElementNS("http://www.w3.org/2000/svg", name);
  if (kind) made.setAttribute("class", kind);
  for (const [key, value] of Object.entries(set)) made.setAttribute(key, value);
  parent?.append(made);
  return made;
};
