// What a page cannot do from afar: its line to the server, keys, the caret, paper or dark.
"use strict";
(() => {
  const silence = Number(document.querySelector("script[data-silence]").dataset.silence);
  Blazor.start({
    circuit: {
      configureSignalR: (line) => line.withServerTimeout(silence),
      // A server on this machine is there at once, or it has ended.
      reconnectionOptions: { maxRetries: 10, retryIntervalMilliseconds: 1000 },
    },
  });

  // Text goes with the version it was typed into and a number of its own, so that two windows never overwrite each other unseen and
  // what is still on its way is never overwritten by an answer to something earlier.
  const told = (event) => ({
    value: event.target.value,
    version: event.target.version ?? 0,
    number: event.target.number ?? 0,
    at: event.target.selectionStart ?? 0,
  });
  Blazor.registerCustomEventType("typed", {
    browserEventName: "input",
    createEventArgs: (event) => { event.target.number = (event.target.number ?? 0) + 1; return told(event); },
  });
  Blazor.registerCustomEventType("caret", { browserEventName: "click", createEventArgs: told });

  document.addEventListener("keydown", (event) => {
    if (!event.altKey || event.key !== "ArrowDown" || event.target.id !== "design-text") return;
    const first = document.querySelector("#completion button");
    if (first) { event.preventDefault(); first.focus(); }
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

  // Escape closes what was opened last around the place one is at, and goes back to what opened it.
  const close = (from) => {
    const sheet = document.querySelector("details.more[open]");
    if (sheet) { sheet.open = false; sheet.querySelector("summary").focus(); return true; }
    for (let around = from.closest?.("[data-closed-by]"); around; around = around.parentElement?.closest("[data-closed-by]")) {
      const opener = document.getElementById(around.dataset.closedBy);
      if (!opener?.offsetParent) continue;
      opener.click();
      opener.focus();
      return true;
    }
    return false;
  };
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && !event.defaultPrevented && close(event.target)) event.preventDefault();
  });
  document.addEventListener("pointerdown", (event) => {
    document.querySelectorAll("details.more[open]").forEach((sheet) => { if (!sheet.contains(event.target)) sheet.open = false; });
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
    // Where a page was asked for comes after what was done since: whoever types by then is not called away.
    focus(id) {
      if (!document.activeElement?.matches("input, select, textarea")) document.getElementById(id)?.focus({ preventScroll: false });
    },
    // What stands in the middle of a window on a drawing stays there as the drawing grows and shrinks. Only a hand moves the middle: a scroll
    // to where the window was put is no hand's, and one told of after the drawing has changed is that of the drawing before. At first the
    // drawing's axis stands there.
    hold(id, axis) {
      const view = document.getElementById(id);
      if (!view || view.held) return;
      view.held = true;
      const state = () => [view.scrollLeft, view.scrollTop, view.scrollWidth, view.scrollHeight, view.clientWidth, view.clientHeight];
      let middle = { x: view.querySelector(axis).x1.baseVal.value / view.querySelector("svg").viewBox.baseVal.width, y: 0.5 };
      let put = state();
      const settle = () => {
        view.scrollTo({ left: middle.x * view.scrollWidth - view.clientWidth / 2, top: middle.y * view.scrollHeight - view.clientHeight / 2 });
        put = state();
      };
      view.addEventListener("scroll", () => {
        const [left, top, ...size] = state();
        if (size.some((side, i) => side !== put[i + 2]) || (left === put[0] && top === put[1])) return;
        middle = { x: (left + view.clientWidth / 2) / view.scrollWidth, y: (top + view.clientHeight / 2) / view.scrollHeight };
        put = state();
      });
      const sizes = new ResizeObserver(settle);
      for (const held of [view, ...view.children]) sizes.observe(held);
    },
    caret(id, value, at, version, number) {
      const text = document.getElementById(id);
      if (!text) return;
      text.focus();
      if ((text.number ?? 0) !== number) return;
      text.version = version;
      if (text.value !== value) text.value = value;
      text.setSelectionRange(at, at);
    },
    push(id, value, version, number) {
      const text = document.getElementById(id);
      if (!text || (text.number ?? 0) !== number) return;
      text.version = version;
      if (value === null || text.value === value) return;
      const { selectionStart, selectionEnd, scrollTop } = text;
      text.value = value;
      if (document.activeElement === text) text.setSelectionRange(selectionStart, selectionEnd);
      text.scrollTop = scrollTop;
    },
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
