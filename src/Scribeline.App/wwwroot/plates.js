// Things on a plate, moved about with pointer or keys. Where a thing snaps to and what gaps that leaves is the program's to say: here it is
// only drawn. Seen from the forward face, the scribe line up: towards it is up, towards 90 degrees is left.
"use strict";
(() => {
  Blazor.registerCustomEventType("placed", { createEventArgs: (event) => event.detail });

  const make = svgElement;

  class PlateLayout extends HTMLElement {
    static observedAttributes = ["data-src"];
    #board = null; #parts = null; #held = null; #asking = false; #wanted = null; #key = null;

    connectedCallback() {
      if (!this.#parts) this.#build();
      this.#load();
    }

    attributeChangedCallback() { if (this.#parts && !this.#held) this.#load(); }

    #build() {
      const svg = make("svg", "plate-drawing", this, { role: "group" });
      const said = document.createElement("p"), gaps = document.createElement("ul");
      said.className = "plate-said";
      said.setAttribute("aria-live", "polite");
      gaps.className = "plate-gaps";
      this.append(said, gaps);
      this.#parts = { svg, said, gaps };
      svg.addEventListener("pointerdown", (event) => this.#take(event));
      svg.addEventListener("pointermove", (event) => this.#drag(event));
      svg.addEventListener("pointerup", (event) => this.#put(event));
      svg.addEventListener("pointercancel", () => { this.#held = null; this.#load(); });
      svg.addEventListener("keydown", (event) => this.#nudge(event));
      svg.addEventListener("focusin", (event) => this.#say(event.target.dataset?.group));
    }

    async #load() {
      const from = this.dataset.src;
      const board = await this.#ask(from);
      if (!board || from !== this.dataset.src || this.#held) return;
      this.#board = board;
      this.#draw();
    }

    async #ask(address) {
      const answer = await fetch(address).catch(() => null);
      return answer?.ok ? answer.json() : null;
    }

    // One question at a time; of those that came meanwhile only the newest.
    async #show(move) {
      this.#wanted = move;
      if (this.#asking) return;
      this.#asking = true;
      while (this.#wanted) {
        const asked = this.#wanted;
        this.#wanted = null;
        const board = await this.#ask(`${this.dataset.src}&group=${encodeURIComponent(asked.group)}&from=${asked.from}&clock=${asked.clock}&fine=${asked.fine}`);
        if (board && (this.#held || this.#key)) { this.#board = board; this.#draw(); this.#say(asked.group); }
      }
      this.#asking = false;
    }

    #place(event) {
      const { svg } = this.#parts;
      const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
      return { x: -point.y, y: -point.x };
    }

    #take(event) {
      const name = event.target.closest?.("[data-group]")?.dataset.group;
      const group = this.#board?.groups.find((g) => g.name === name && g.moves);
      if (!group) return;
      event.preventDefault();
      this.#parts.svg.setPointerCapture(event.pointerId);
      const copy = Number(event.target.dataset.copy ?? 0), at = group.clock + 2 * Math.PI * copy / group.count;
      this.#held = {
        group: group.name, turns: group.turns, copy: 2 * Math.PI * copy / group.count, begun: this.#place(event), clock: group.clock,
        middle: { x: group.from * Math.cos(at), y: group.from * Math.sin(at) }, moved: false,
      };
      this.#say(name);
    }

    #drag(event) {
      const held = this.#held;
      if (!held) return;
      const now = this.#place(event);
      if (!held.moved && Math.hypot(now.x - held.begun.x, now.y - held.begun.y) < 0.4) return;
      held.moved = true;
      held.move = held.turns
        ? { group: held.group, from: 0, clock: held.clock + Math.atan2(now.y, now.x) - Math.atan2(held.begun.y, held.begun.x), fine: event.altKey }
        : this.#polar(held, { x: held.middle.x + now.x - held.begun.x, y: held.middle.y + now.y - held.begun.y }, event.altKey);
      this.#show(held.move);
    }

    #polar(held, to, fine) { return { group: held.group, from: Math.hypot(to.x, to.y), clock: Math.atan2(to.y, to.x) - held.copy, fine }; }

    #put(event) {
      const held = this.#held;
      if (!held) return;
      this.#parts.svg.releasePointerCapture?.(event.pointerId);
      this.#held = null;
      if (held.moved && held.move) this.#tell(held.move); else this.#load();
    }

    #tell(move) { this.dispatchEvent(new CustomEvent("placed", { bubbles: true, detail: move })); }

    // Keys move what is picked: left and right round the middle, up and down from it.
    #nudge(event) {
      const group = this.#board?.groups.find((g) => g.name === event.target.dataset?.group && g.moves);
      const fine = event.altKey, turn = (fine ? 0.5 : 5) * Math.PI / 180, far = fine ? 0.4 : 1;
      const change = { ArrowLeft: [0, turn], ArrowRight: [0, -turn], ArrowUp: [far, 0], ArrowDown: [-far, 0] }[event.key];
      if (!group || !change || event.ctrlKey || event.metaKey) return;
      event.preventDefault();
      if (group.turns && change[0] !== 0) return;
      const move = { group: group.name, from: Math.max(0, group.from + change[0]), clock: group.clock + change[1], fine: true };
      this.#key = move;
      this.#show(move).then(() => {
        if (this.#key !== move) return;
        this.#key = null;
        this.#tell(move);
      });
    }

    #say(name) {
      const group = this.#board?.groups.find((g) => g.name === name);
      if (group) this.#parts.said.textContent = group.words;
    }

    #draw() {
      const { svg, gaps } = this.#parts, board = this.#board;
      const picked = document.activeElement?.dataset?.group;
      const reach = Math.max(board.radius, ...board.bore.map((b) => b / 2)) * 1.04;
      svg.setAttribute("viewBox", `${-reach} ${-reach - 4} ${2 * reach} ${2 * reach + 4}`);
      svg.setAttribute("aria-label", this.dataset.label);
      svg.replaceChildren();
      for (const bore of new Set(board.bore)) make("circle", "plate-bore", svg, { r: bore / 2 });
      make("circle", "plate-edge", svg, { r: board.radius });
      make("line", "plate-scribe", svg, { x1: 0, x2: 0, y1: -reach - 3, y2: -board.radius + 4 });
      make("path", "plate-middle", svg, { d: "M-2 0H2M0 -2V2" });
      for (const group of [...board.groups].sort((a, b) => Number(a.moves) - Number(b.moves))) {
        const drawn = make("g", group.moves ? "plate-group" : "plate-group plate-fixed", svg, { "data-group": group.name });
        if (group.moves) {
          drawn.setAttribute("tabindex", "0");
          drawn.setAttribute("role", "button");
          drawn.setAttribute("aria-label", `${group.words}. Arrow keys move it.`);
        }
        // Large things first, so that small ones on them can be taken hold of.
        const size = (t) => t.circle ? t.circle[2] : Math.hypot(t.corners[0] - t.corners[4], t.corners[1] - t.corners[5]) / 2;
        for (const thing of [...group.things].sort((a, b) => size(b) - size(a))) {
          const set = { "data-group": group.name, "data-copy": thing.copy };
          const kind = `plate-thing plate-${thing.face}`;
          if (thing.circle) make("circle", kind, drawn, { cx: -thing.circle[1], cy: -thing.circle[0], r: thing.circle[2], ...set });
          else make("polygon", kind, drawn, { points: thing.corners.map((_, i) => -thing.corners[i % 2 ? i - 1 : i + 1]).join(" "), ...set });
        }
      }
      const names = make("g", "plate-names", svg, { "aria-hidden": "true" });
      for (const group of board.groups) {
        for (let copy = 0; copy < group.count; copy++) {
          const at = group.clock + 2 * Math.PI * copy / group.count, tall = reach / 17;
          const name = make("text", "plate-name", names, { x: -group.from * Math.sin(at), y: -group.from * Math.cos(at) + tall / 3, "text-anchor": "middle", "font-size": tall, "stroke-width": tall / 4 });
          name.textContent = group.count > 1 ? `${group.name} ${copy + 1}` : group.name;
        }
      }
      if (picked) [...svg.querySelectorAll("g[data-group]")].find((g) => g.dataset.group === picked)?.focus({ preventScroll: true });
      gaps.replaceChildren();
      for (const gap of board.gaps) {
        const item = document.createElement("li"), verdict = document.createElement("span");
        verdict.className = `verdict verdict-${gap.verdict}`;
        verdict.textContent = `${gap.sign} ${gap.verdict}`;
        item.append(verdict, ` ${gap.width} between ${gap.words}`);
        gaps.append(item);
      }
    }
  }

  customElements.define("plate-layout", PlateLayout);
})();
