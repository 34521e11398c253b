// What a page cannot do from afar: keys, the caret, paper or dark.
"use strict";
(() => {
  Blazor.registerCustomEventType("typed", {
    browserEventName: "input",
    createEventArgs: (event) => ({
      value: event.target.value,
      version: Number(event.target.dataset.version ?? 0),
      at: event.target.selectionStart ?? 0,
    }),
  });

  document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const id = key === "s" ? "save" : key === "z" && !event.shiftKey ? "undo" : key === "y" || (key === "z" && event.shiftKey) ? "redo" : null;
    const button = id && document.getElementById(id);
    if (!button) return;
    event.preventDefault();
    button.click();
  });

  const show = () => {
    const ground = document.documentElement.dataset.ground ?? "";
    document.querySelectorAll("input[data-ground]").forEach((choice) => { choice.checked = choice.value === ground; });
  };
  document.addEventListener("change", (event) => {
    if (!event.target.matches?.("input[data-ground]")) return;
    const ground = event.target.value;
    if (ground) { document.documentElement.dataset.ground = ground; localStorage.setItem("ground", ground); }
    else { delete document.documentElement.dataset.ground; localStorage.removeItem("ground"); }
  });
  document.addEventListener("toggle", show, true);

  window.scribeline = {
    live() { document.documentElement.dataset.live = ""; show(); },
    goToLine(id, line) {
      const text = document.getElementById(id);
      if (!text) return;
      const start = text.value.split("\n").slice(0, line - 1).reduce((sum, l) => sum + l.length + 1, 0);
      const end = text.value.indexOf("\n", start);
      text.focus();
      text.setSelectionRange(start, end < 0 ? text.value.length : end);
      text.scrollTop = Math.max(0, (line - 6) * parseFloat(getComputedStyle(text).lineHeight));
    },
  };
})();
