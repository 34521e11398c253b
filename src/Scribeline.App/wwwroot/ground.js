// Before the first stroke is drawn: paper or dark, as the person chose on this machine.
"use strict";
(() => {
  const ground = localStorage.getItem("ground");
  if (ground === "light" || ground === "dark") document.documentElement.dataset.ground = ground;
})();
