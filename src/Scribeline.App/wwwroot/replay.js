// The flight in time. Where everything is and what it does comes from the program, at close moments; here it is only drawn between them.
"use strict";
(() => {
  const Room = { left: 64, right: 44, top: 64, bottom: 44, width: 600, height: 460, least: 200 };
  const Rocket = 62, Stout = 2.2, Canopy = 24;
  const make = svgElement;
  const element = (name, kind, parent, words) => {
    const made = document.createElement(name);
    if (kind) made.className = kind;
    if (words) made.textContent = words;
    parent?.append(made);
    return made;
  };
  const still = matchMedia("(prefers-reduced-motion: reduce)");

  class FlightReplay extends HTMLElement {
    static observedAttributes = ["data-src"];
    #film = null; #time = 0; #playing = null; #parts = null;

    connectedCallback() {
      if (!this.#parts) this.#build();
      document.addEventListener("scribeline:go", this.#go);
      this.#load();
    }

    disconnectedCallback() {
      this.#pause();
      document.removeEventListener("scribeline:go", this.#go);
      document.dispatchEvent(new CustomEvent("scribeline:clock", { detail: null }));
    }

    attributeChangedCallback() { if (this.#parts) this.#load(); }

    #go = (event) => { this.#pause(); this.#to(event.detail); };

    #build() {
      const stage = element("div", "replay-stage", this);
      const svg = make("svg", "replay-picture", stage, { role: "img" });
      const beside = element("div", "replay-beside", stage);
      const state = element("div", "replay-state", beside);
      const events = element("ol", "replay-events", beside);
      const bar = element("div", "replay-bar", this);
      const play = element("button", "main", bar, "Play");
      const back = element("button", "", bar, "Moment before"), on = element("button", "", bar, "Next moment");
      [play, back, on].forEach((b) => { b.type = "button"; });
      const pace = element("select", "", bar);
      pace.setAttribute("aria-label", "How fast it plays");
      for (const [value, words] of [["1", "as it is"], ["5", "5 times as fast"], ["20", "20 times as fast"]]) {
        const choice = element("option", "", pace, words);
        choice.value = value;
      }
      pace.value = "5";
      const line = element("div", "replay-line", bar);
      const marks = make("svg", "replay-marks", line);
      marks.setAttribute("aria-hidden", "true");
      const slider = element("input", "replay-slider", line);
      Object.assign(slider, { type: "range", min: "0", step: "any", value: "0" });
      slider.setAttribute("aria-label", "Time of the flight");
      const said = element("p", "sr", this);
      said.setAttribute("aria-live", "polite");
      this.#parts = { svg, marks, state, events, play, back, on, pace, slider, said, scene: null };
      slider.addEventListener("input", () => { this.#pause(); this.#to(Number(slider.value)); });
      slider.addEventListener("keydown", (event) => this.#key(event));
      play.addEventListener("click", () => (this.#playing ? this.#pause() : this.#play()));
      back.addEventListener("click", () => this.#moment(-1));
      on.addEventListener("click", () => this.#moment(1));
      const settle = () => { play.hidden = pace.hidden = still.matches; if (still.matches) this.#pause(); };
      still.addEventListener("change", settle);
      settle();
    }

    async #load() {
      const from = this.dataset.src;
      const answer = await fetch(from).catch(() => null);
      if (from !== this.dataset.src || !answer?.ok) return;
      this.#film = await answer.json();
      this.#parts.slider.max = String(this.#end);
      this.#scene();
      this.#list();
      this.#mark();
      this.#to(this.#time);
    }

    // One tenth of a second with an arrow, five with a page.
    #key(event) {
      const step = { ArrowRight: 0.1, ArrowUp: 0.1, ArrowLeft: -0.1, ArrowDown: -0.1, PageUp: 5, PageDown: -5 }[event.key];
      if (step === undefined || !this.#film) return;
      event.preventDefault();
      this.#pause();
      this.#to(this.#time + step);
    }

    #play() {
      if (!this.#film) return;
      if (this.#time >= this.#end - 1e-3) this.#time = 0;
      let before = performance.now();
      const frame = (now) => {
        if (!this.#playing) return;
        this.#to(this.#time + (now - before) / 1000 * Number(this.#parts.pace.value));
        before = now;
        if (this.#time >= this.#end) this.#pause();
        else this.#playing = requestAnimationFrame(frame);
      };
      this.#playing = requestAnimationFrame(frame);
      this.#parts.play.textContent = "Pause";
    }

    #pause() {
      if (this.#playing) cancelAnimationFrame(this.#playing);
      this.#playing = null;
      if (this.#parts) this.#parts.play.textContent = "Play";
    }

    #moment(by) {
      if (!this.#film) return;
      this.#pause();
      const times = this.#film.events.map((e) => this.#when(e));
      const to = by > 0 ? times.find((t) => t > this.#time + 1e-3) : times.findLast((t) => t < this.#time - 1e-3);
      this.#to(to ?? (by > 0 ? this.#end : 0));
      this.#parts.said.textContent = this.#words();
    }

    #to(time) {
      if (!this.#film) return;
      this.#time = Math.max(0, Math.min(this.#end, time));
      const { slider } = this.#parts;
      slider.value = String(this.#time);
      slider.setAttribute("aria-valuetext", this.#words());
      this.#draw();
      this.#tell();
      document.dispatchEvent(new CustomEvent("scribeline:clock", { detail: this.#time }));
    }

    get #end() { return this.#film.times.at(-1); }

    #when(event) { return this.#film.times[event.moment]; }

    #start(body) { return this.#film.times[body.from]; }

    #stop(body) { return this.#film.times[body.from + body.x.length - 1]; }

    // A body at the time: what lies on the ground stays there.
    #alive() { return this.#film.bodies.filter((b) => this.#time >= this.#start(b) && (this.#time < this.#stop(b) || b.lands || this.#stop(b) >= this.#end)); }

    #rests(body) { return body.lands && this.#time >= this.#stop(body) - 1e-3; }

    // The last moment that is not after the time.
    get #passed() {
      const { times } = this.#film;
      let low = 0, high = times.length - 1;
      while (low < high) {
        const middle = (low + high + 1) >> 1;
        if (times[middle] <= this.#time + 1e-4) low = middle; else high = middle - 1;
      }
      return low;
    }

    // The moment nearest to the time: words are of it.
    get #nearest() {
      const before = this.#passed, { times } = this.#film;
      return before + 1 < times.length && times[before + 1] - this.#time < this.#time - times[before] ? before + 1 : before;
    }

    #at(body) {
      const last = body.x.length - 1, first = Math.max(0, Math.min(last, this.#passed - body.from)), next = Math.min(last, first + 1);
      const [from, to] = [this.#film.times[body.from + first], this.#film.times[body.from + next]];
      const share = to > from ? Math.max(0, Math.min(1, (this.#time - from) / (to - from))) : 0;
      const between = (list) => list[first] + (list[next] - list[first]) * share;
      return { i: Math.max(0, Math.min(last, this.#nearest - body.from)), gone: first, x: between(body.x), z: between(body.z), turn: between(body.turn) };
    }

    #now() { return this.#film.events.findLastIndex((e) => this.#when(e) <= this.#time + 1e-3); }

    #words() {
      const bodies = this.#alive().map((b) => { const { i } = this.#at(b); return `${b.name}: ${b.height[i]}, ${b.speed[i]}, ${this.#does(b, i)}`; });
      const event = this.#film.events[this.#now()];
      return [this.#clock(), ...bodies, event ? `just now: ${event.name}${event.says ? `, ${event.says}` : ""}` : ""].filter(Boolean).join("; ");
    }

    #clock() { return this.#film.clock[this.#nearest]; }

    #does(body, i) { return this.#rests(body) ? "on the ground" : body.doing[body.does[i]]; }

    #tell() {
      const { state, events } = this.#parts, film = this.#film;
      const now = this.#now(), bodies = this.#alive();
      if (state.childElementCount !== bodies.length + 1) {
        state.replaceChildren();
        element("p", "replay-time", state);
        for (const _ of bodies) {
          const block = element("p", "", state);
          ["replay-name", "", "replay-values"].forEach((kind) => element("span", kind, block));
        }
      }
      state.children[0].textContent = this.#clock();
      bodies.forEach((body, n) => {
        const { i } = this.#at(body), block = state.children[n + 1].children;
        block[0].textContent = body.name;
        block[1].textContent = this.#does(body, i);
        block[2].textContent = this.#rests(body) ? `it touched down at ${body.speed[i]}` : `height ${body.height[i]}, speed ${body.speed[i]}`;
      });
      [...events.children].forEach((item, n) => {
        item.classList.toggle("past", this.#when(film.events[n]) <= this.#time + 1e-3);
        if (n === now) item.firstElementChild.setAttribute("aria-current", "step"); else item.firstElementChild.removeAttribute("aria-current");
      });
      const item = events.children[now];
      if (!item) return;
      const from = item.offsetTop - events.offsetTop;
      if (from < events.scrollTop || from + item.offsetHeight > events.scrollTop + events.clientHeight) events.scrollTop = from - events.clientHeight / 2;
    }

    #list() {
      const { events } = this.#parts;
      events.replaceChildren();
      for (const event of this.#film.events) {
        const button = element("button", "link", element("li", "", events));
        button.type = "button";
        element("span", "replay-when", button, event.when);
        const what = element("span", event.differs ? `differs ${event.differs}` : "", button, ` ${event.name}`);
        if (event.says) element("span", "replay-differs", what, ` ${event.says}`);
        button.addEventListener("click", () => { this.#pause(); this.#to(this.#when(event)); });
      }
    }

    // Everything that happens along the slider; what is not as planned stands taller, what does not happen is crossed out.
    #mark() {
      const { marks } = this.#parts, film = this.#film;
      marks.replaceChildren();
      for (const event of film.events) {
        const at = make("svg", "", marks, { x: `${(this.#when(event) / this.#end * 100).toFixed(2)}%`, overflow: "visible" });
        if (event.differs === "absent") make("path", "replay-absent", at, { d: "M-4 3 L4 11 M4 3 L-4 11" });
        else if (event.differs) make("path", "replay-otherwise", at, { d: "M0 0 V14" });
        else make("path", "replay-as", at, { d: "M0 7 V14" });
      }
    }

    // What does not move: ground, axes, paths.
    #scene() {
      const { svg } = this.#parts, film = this.#film;
      const wide = Math.max(film.far.high - film.far.low, 1), high = Math.max(film.high.high, 1);
      const scale = Math.min((Room.width - Room.left - Room.right) / wide, (Room.height - Room.top - Room.bottom) / high);
      const field = { width: Math.max(Room.least, wide * scale), height: Math.max(Room.least, high * scale) };
      const size = { width: field.width + Room.left + Room.right, height: field.height + Room.top + Room.bottom };
      const middle = (field.width - wide * scale) / 2;
      const x = (metres) => Room.left + middle + (metres - film.far.low) * scale;
      const y = (metres) => size.height - Room.bottom - metres * scale;
      svg.replaceChildren();
      svg.setAttribute("viewBox", `0 0 ${size.width.toFixed(1)} ${size.height.toFixed(1)}`);
      svg.setAttribute("aria-label", `The flight from the side, ${film.along}. What it shows stands in words beside it.`);
      const base = y(0);
      for (const tick of film.high.ticks) {
        if (tick.at > film.high.high || tick.at < 0) continue;
        make("line", "replay-rule", svg, { x1: Room.left, x2: size.width - 8, y1: y(tick.at), y2: y(tick.at) });
        make("text", "replay-tick", svg, { x: Room.left - 6, y: y(tick.at) + 4, "text-anchor": "end" }).textContent = tick.words;
      }
      // Numbers across only where there is room for them, zero always.
      const [first, second] = film.far.ticks;
      const apart = second ? second.at - first.at : 1;
      const every = Math.max(1, Math.ceil(68 / (apart * scale)));
      for (const tick of film.far.ticks) {
        make("line", "replay-rule", svg, { x1: x(tick.at), x2: x(tick.at), y1: base, y2: base + 5 });
        if (Math.round(tick.at / apart) % every !== 0) continue;
        make("text", "replay-tick", svg, { x: x(tick.at), y: base + 18, "text-anchor": "middle" }).textContent = tick.words;
      }
      make("text", "replay-tick", svg, { x: size.width / 2, y: size.height - 6, "text-anchor": "middle" }).textContent = film.along;
      make("line", "replay-ground", svg, { x1: Room.left, x2: size.width - 8, y1: base, y2: base });
      const paths = film.bodies.map((b) => {
        const points = b.x.map((at, i) => `${x(at).toFixed(1)},${y(b.z[i]).toFixed(1)}`);
        make("polyline", "replay-path", svg, { points: points.join(" ") });
        return { points, gone: make("polyline", "replay-gone", svg) };
      });
      this.#parts.scene = { x, y, base, paths, actors: make("g", "", svg) };
    }

    #draw() {
      const { scene } = this.#parts, film = this.#film;
      scene.actors.replaceChildren();
      film.bodies.forEach((body, n) => {
        const { points, gone } = scene.paths[n];
        const at = this.#at(body);
        gone.setAttribute("points", this.#time < this.#start(body) ? "" : [...points.slice(0, at.gone + 1), `${scene.x(at.x).toFixed(1)},${scene.y(at.z).toFixed(1)}`].join(" "));
      });
      for (const body of this.#alive()) {
        const at = this.#at(body), place = { x: scene.x(at.x), y: scene.y(at.z) };
        const group = make("g", "replay-body", scene.actors, { transform: `translate(${place.x.toFixed(2)} ${place.y.toFixed(2)})` });
        const landed = this.#rests(body);
        const runs = this.#runs(body);
        const open = film.canopies.filter((c) => this.#time >= c.stretch && c.piece >= body.first && c.piece <= body.last);
        if (landed && !(body.whole && runs.length === 1)) { this.#lying(group, runs); continue; }
        const flying = body.whole && runs.length === 1 && open.length === 0;
        const deep = flying ? this.#flying(group, runs[0], body, landed ? (at.turn < 0 ? -90 : 90) : at.turn) : this.#hanging(group, runs, open);

        // Drawn far larger than it is, it would reach into the ground while it still flies.
        const up = Math.max(0, Math.min(deep, place.y + deep - scene.base));
        group.setAttribute("transform", `translate(${place.x.toFixed(2)} ${(place.y - up).toFixed(2)})`);
      }
    }

    // Pieces that still hold together.
    #runs(body) {
      const runs = [[body.first]];
      for (let piece = body.first; piece < body.last; piece++) {
        const parts = this.#film.breaks[piece];
        if (parts !== null && parts !== undefined && this.#time >= parts) runs.push([piece + 1]); else runs.at(-1).push(piece + 1);
      }
      return runs;
    }

    get #perMetre() { return Rocket / (this.#film.pieces.at(-1).rear - this.#film.pieces[0].front); }

    #flying(group, run, body, turn) {
      const turned = make("g", "", group, { transform: `rotate(${turn.toFixed(1)})` });
      const middle = body.middle || this.#centre(run), cosine = Math.cos(turn * Math.PI / 180);
      this.#outline(turned, run, middle, false);
      const [nose, tail] = [this.#film.pieces[run[0]].front, this.#film.pieces[run.at(-1)].rear].map((station) => (station - middle) * this.#perMetre * cosine);
      return Math.max(nose, tail) + 3;
    }

    #centre(run) { return (this.#film.pieces[run[0]].front + this.#film.pieces[run.at(-1)].rear) / 2; }

    #length(run) { return (this.#film.pieces[run.at(-1)].rear - this.#film.pieces[run[0]].front) * this.#perMetre; }

    // Pieces hang from the canopies by their cords: the foremost nose down, what follows tail down.
    #hanging(group, runs, open) {
      const lift = open.length === 0 ? 0 : 10;
      let below = lift, deep = 0;
      runs.forEach((run, n) => {
        const aside = runs.length === 1 ? 0 : (n - (runs.length - 1) / 2) * 22;
        const length = this.#length(run), foremost = run[0] === 0 && runs.length > 1;
        make("path", "replay-cord", group, { d: `M0 0 L${aside} ${below}` });
        if (open.length === 0) {
          const flat = make("g", "", group, { transform: `translate(${aside} ${below}) rotate(${60 + 60 * n})` });
          this.#outline(flat, run, this.#centre(run), false);
        } else {
          const piece = make("g", "", group, { transform: `translate(${aside} ${below + length / 2})` });
          this.#outline(piece, run, this.#centre(run), foremost);
        }
        deep = Math.max(deep, below + (open.length === 0 ? length / 2 : length));
        below += 12;
      });
      const largest = Math.max(...open.map((c) => c.diameter));
      open.forEach((canopy, n) => {
        const filled = canopy.fill > 0 ? Math.min(1, (this.#time - canopy.stretch) / canopy.fill) : 1;
        const full = Canopy * Math.max(0.4, Math.sqrt(canopy.diameter / largest));
        const radius = full * (0.25 + 0.75 * Math.sqrt(filled));
        const lean = open.length === 1 ? 0 : (n - (open.length - 1) / 2) * 34;
        const top = make("g", "replay-canopy", group, { transform: `rotate(${lean})` });
        const skirt = -(radius * 0.9 + 14);
        make("path", "replay-cord", top, { d: [-1, -0.33, 0.33, 1].map((s) => `M0 0 L${(s * radius).toFixed(1)} ${skirt.toFixed(1)}`).join(" ") });
        make("path", "replay-cloth", top, { d: `M${-radius} ${skirt} A${radius} ${radius * 0.85} 0 0 1 ${radius} ${skirt} Q0 ${skirt - radius * 0.25} ${-radius} ${skirt} Z` });
      });
      return deep;
    }

    #lying(group, runs) {
      const whole = runs.reduce((sum, run) => sum + this.#length(run) + 8, -8);
      let from = -whole / 2;
      for (const run of runs) {
        const length = this.#length(run);
        const flat = make("g", "", group, { transform: `translate(${from + length / 2} -2) rotate(-90)` });
        this.#outline(flat, run, this.#centre(run), false);
        from += length + 8;
      }
    }

    #outline(group, run, centre, upsideDown) {
      const scale = this.#perMetre, over = upsideDown ? -1 : 1;
      for (const piece of run) for (const outline of this.#film.pieces[piece].outlines) {
        const points = [];
        for (let i = 0; i < outline.length; i += 2) points.push(`${(outline[i + 1] * scale * Stout).toFixed(2)},${((outline[i] - centre) * scale * over).toFixed(2)}`);
        make("polygon", "replay-piece", group, { points: points.join(" ") });
      }
    }
  }

  customElements.define("flight-replay", FlightReplay);
})();
