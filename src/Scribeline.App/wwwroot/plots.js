// Follows a finger, or the arrow keys, over a drawn plot and tells the values there. They come in words from the program: nothing is computed here.
"use strict";
(() => {
  const Narrow = 480;
  const make = svgElement;
  const nearest = (sorted, value) => {
    let low = 0, high = sorted.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sorted[middle] < value) low = middle + 1; else high = middle;
    }
    return low > 0 && value - sorted[low - 1] < sorted[low] - value ? low - 1 : low;
  };

  class PlotReading extends HTMLElement {
    static observedAttributes = ["data-src", "data-label"];
    #told = null; #at = null; #clock = null; #parts = null; #resize = null;

    connectedCallback() {
      if (!this.#parts) this.#build();
      this.#resize = new ResizeObserver(() => this.#draw());
      this.#resize.observe(this);
      document.addEventListener("scribeline:clock", this.#follow);
      this.#load();
    }

    disconnectedCallback() {
      this.#resize?.disconnect();
      document.removeEventListener("scribeline:clock", this.#follow);
    }

    attributeChangedCallback() { if (this.#parts) this.#load(); }

    #follow = (event) => { this.#clock = event.detail; this.#draw(); };

    #build() {
      const pad = document.createElement("div");
      pad.className = "plot-pad";
      pad.hidden = true; // until there is something to read
      pad.tabIndex = 0;
      pad.setAttribute("role", "slider");
      pad.setAttribute("aria-valuemin", "0");
      const svg = make("svg", "plot-over", pad);
      svg.setAttribute("aria-hidden", "true");
      const clock = make("line", "plot-clock", svg), cross = make("line", "plot-cross", svg);
      const words = document.createElement("p");
      words.className = "plot-words";
      words.setAttribute("aria-hidden", "true");
      this.append(pad, words);
      this.#parts = { pad, svg, clock, cross, words, dots: [] };
      pad.addEventListener("pointermove", (event) => this.#point(event));
      pad.addEventListener("pointerdown", (event) => { this.#point(event); this.#tellClock(); });
      pad.addEventListener("pointerleave", () => { if (document.activeElement !== pad) { this.#at = null; this.#draw(); } });
      pad.addEventListener("blur", () => { this.#at = null; this.#draw(); });
      pad.addEventListener("focus", () => { if (this.#at === null && this.#told) { this.#at = 0; this.#draw(); } });
      pad.addEventListener("keydown", (event) => this.#key(event));
    }

    async #load() {
      const from = this.dataset.src, { pad, svg } = this.#parts;
      pad.setAttribute("aria-busy", "true");
      const told = await fetch(from).then((answer) => answer.ok ? answer.json() : null).catch(() => null);
      if (from !== this.dataset.src) return;
      pad.setAttribute("aria-busy", "false");
      if (!told) return;
      this.#told = told;
      pad.setAttribute("aria-label", `${this.dataset.label}. Arrow keys read the values.`);
      pad.setAttribute("aria-valuemax", String(Math.max(0, this.#told.x.length - 1)));
      pad.hidden = !this.#told.wide;
      this.#parts.dots.forEach((dot) => dot.remove());
      this.#parts.dots = this.#told.series.map(() => make("circle", "plot-dot", svg));
      if (this.#at !== null) this.#at = Math.min(this.#at, this.#told.x.length - 1);
      this.#draw();
    }

    get #frame() { return this.clientWidth <= Narrow ? this.#told.narrow : this.#told.wide; }

    #point(event) {
      if (!this.#told?.wide) return;
      const box = this.#parts.pad.getBoundingClientRect(), frame = this.#frame;
      const x = (event.clientX - box.left) / box.width * frame.width;
      this.#at = nearest(this.#told.along, (x - frame.left) / (frame.right - frame.left));
      this.#draw();
    }

    #key(event) {
      if (!this.#told?.wide || event.ctrlKey || event.altKey || event.metaKey) return;
      const last = this.#told.x.length - 1, at = this.#at ?? 0;
      const to = { ArrowRight: at + 1, ArrowUp: at + 1, ArrowLeft: at - 1, ArrowDown: at - 1, PageUp: at + 20, PageDown: at - 20, Home: 0, End: last }[event.key];
      if (to === undefined) return;
      event.preventDefault();
      this.#at = Math.max(0, Math.min(last, to));
      this.#draw();
      this.#tellClock();
    }

    // A plot of the flight takes the replay along.
    #tellClock() {
      if (this.#told?.clock && this.#at !== null) document.dispatchEvent(new CustomEvent("scribeline:go", { detail: this.#told.x[this.#at] }));
    }

    #draw() {
      if (!this.#told?.wide) return;
      const { pad, svg, clock, cross, words, dots } = this.#parts, told = this.#told, frame = this.#frame;
      svg.setAttribute("viewBox", `0 0 ${frame.width} ${frame.height}`);
      const xOf = (share) => frame.left + share * (frame.right - frame.left);
      const stand = (line, x) => {
        line.style.display = x === null ? "none" : "";
        if (x === null) return;
        line.setAttribute("x1", x); line.setAttribute("x2", x);
        line.setAttribute("y1", frame.top); line.setAttribute("y2", frame.bottom);
      };
      stand(clock, told.clock && this.#clock !== null ? this.#clockX(xOf) : null);
      stand(cross, this.#at === null ? null : xOf(told.along[this.#at]));
      dots.forEach((dot, i) => {
        const up = this.#at === null ? null : told.up[i][this.#at];
        dot.style.display = up === null ? "none" : "";
        if (up === null) return;
        dot.setAttribute("cx", xOf(told.along[this.#at]));
        dot.setAttribute("cy", frame.bottom - up * (frame.bottom - frame.top));
        dot.setAttribute("r", "4");
      });
      const at = this.#at ?? 0;
      const values = told.series.map((name, i) => told.text[i][at] && `${name} ${told.text[i][at]}`).filter(Boolean);
      const said = [`${told.across[at]}`, ...values].join(" · ") + (told.marks[at] ? ` · ${told.marks[at]}` : "");
      pad.setAttribute("aria-valuenow", String(at));
      pad.setAttribute("aria-valuetext", said);
      words.textContent = this.#at === null ? "Touch the plot or point at it, or use the arrow keys on it, to read values." : said;
    }

    #clockX(xOf) {
      const { x, along } = this.#told, last = x.length - 1;
      if (this.#clock < x[0] || this.#clock > x[last]) return null;
      const before = Math.min(last - 1, Math.max(0, x.findIndex((t) => t > this.#clock) - 1));
      const share = last === 0 ? 0 : (this.#clock - x[before]) / (x[before + 1] - x[before] || 1);
      return xOf(along[before] + (along[Math.min(last, before + 1)] - along[before]) * Math.min(1, share));
    }
  }

  customElements.define("plot-reading", PlotReading);
})();
