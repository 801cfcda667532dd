// The circuits sheet by keyboard, clipboard and mouse. Everything ends in the one form that the page could send itself.
const HERE = "td-grid__cell--here", PICKED = "td-grid__cell--picked";

export function grid(page) {
  let sheet = null, here = null, anchor = null, editor = null;

  const cells = () => [...sheet.querySelectorAll(".td-grid__cell")];
  const rows = () => [...sheet.querySelectorAll(".td-grid__row")];
  const cellsOf = row => [...row.querySelectorAll(".td-grid__cell")];
  const byPath = path => cells().find(cell => plain(cell.dataset.path) === plain(path));
  // The side a fact is written to may change with the first edit; the fact stays the same.
  const plain = path => (path || "").replace(/^(house|plan|built)\./, "");

  function place(cell) {
    const row = cell.closest(".td-grid__row");
    return { row: rows().indexOf(row), column: cellsOf(row).indexOf(cell) };
  }

  function at(row, column) {
    const found = rows()[row];
    return found ? cellsOf(found)[column] : undefined;
  }

  function goTo(cell, extend) {
    if (!cell) return;
    if (here) { here.classList.remove(HERE); here.tabIndex = -1; }
    here = cell;
    if (!extend) anchor = cell;
    here.classList.add(HERE);
    here.tabIndex = 0;
    here.focus({ preventScroll: false });
    here.scrollIntoView({ block: "nearest", inline: "nearest" });
    showPicked();
  }

  function picked() {
    if (!here) return [];
    const a = place(anchor || here), b = place(here);
    const lines = [];
    for (let row = Math.min(a.row, b.row); row <= Math.max(a.row, b.row); row++) {
      const line = [];
      for (let column = Math.min(a.column, b.column); column <= Math.max(a.column, b.column); column++) line.push(at(row, column));
      lines.push(line);
    }
    return lines;
  }

  function showPicked() {
    for (const cell of sheet.querySelectorAll("." + PICKED)) cell.classList.remove(PICKED);
    const lines = picked();
    if (lines.length > 1 || (lines[0] && lines[0].length > 1)) for (const line of lines) for (const cell of line) cell.classList.add(PICKED);
  }

  function send(address, values) {
    values.base = sheet.dataset.base;
    values.side = sheet.dataset.side;
    sheet.setAttribute("aria-busy", "true");
    return htmx.ajax("POST", address, { source: sheet, target: "#sheet", swap: "outerHTML", values });
  }

  // One request at a time; what is typed meanwhile goes together with the next one.
  let waiting = [], sent = null;

  function change(changes) {
    if (!changes.length) return;
    for (const one of changes) {
      // Changed again before it was sent: only the last counts.
      const same = waiting.find(other => other.path === one.path);
      if (same) same.typed = one.typed; else waiting.push(one);
    }
    if (!sent) flush();
  }

  function flush() {
    if (!waiting.length || sent) return;
    sent = waiting;
    waiting = [];
    send(sheet.dataset.address, {
      path: sent.map(one => one.path), was: sent.map(one => one.was), typed: sent.map(one => one.typed),
    });
  }

  function answered() {
    const before = sent || [];
    sent = null;
    for (const one of waiting) {
      const cell = byPath(one.path);
      if (!cell) continue;
      // A fact changed twice in a row: what the first change left is what the second one saw.
      if (before.some(other => plain(other.path) === plain(one.path))) { one.path = cell.dataset.path; one.was = cell.dataset.was; }
      if (!(editor && editor.cell === cell)) cell.textContent = one.typed;
    }
    // Only when the answer before it is altogether done with is the next request let out.
    if (waiting.length) setTimeout(flush, 0);
  }

  function edit(cell, text) {
    if (editor) close(true);
    const input = page.createElement("input");
    input.className = "td-grid__input";
    input.setAttribute("aria-label", cell.dataset.label);
    if (cell.dataset.list) input.setAttribute("list", cell.dataset.list);
    input.autocomplete = "off";
    input.spellcheck = false;
    editor = { cell, input, before: cell.textContent };
    cell.textContent = "";
    cell.append(input);
    input.value = text === undefined ? editor.before : text;
    input.focus();
    if (text === undefined) input.select();
    input.addEventListener("blur", () => { if (editor && editor.input === input) close(true); });
  }

  function close(keep) {
    const { cell, input, before } = editor;
    const typed = input.value.trim();
    editor = null;
    cell.textContent = keep ? typed : before;
    if (keep && typed !== before) change([{ path: cell.dataset.path, was: cell.dataset.was, typed }]);
  }

  function keys(event) {
    if (!here || event.defaultPrevented) return;
    const { row, column } = place(here);
    const command = event.ctrlKey || event.metaKey;
    if (editor) {
      if (event.key === "Escape") { close(false); goTo(here); event.preventDefault(); }
      else if (event.key === "Enter") { close(true); goTo(at(row + (event.shiftKey ? -1 : 1), column) || here); event.preventDefault(); }
      else if (event.key === "Tab") {
        const next = at(row, column + (event.shiftKey ? -1 : 1));
        close(true);
        if (next) { goTo(next); event.preventDefault(); }
      }
      return;
    }
    if (event.target.closest && !event.target.closest(".td-grid__cell")) return;
    const steps = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] };
    if (steps[event.key]) {
      const [down, right] = steps[event.key];
      const far = command ? 1000 : 1;
      let next = at(row + down * far, column + right * far);
      if (!next && far > 1) next = down ? at(down < 0 ? 0 : rows().length - 1, column) : at(row, right < 0 ? 0 : cellsOf(rows()[row]).length - 1);
      goTo(next, event.shiftKey);
      event.preventDefault();
    } else if (event.key === "Home" || event.key === "End") {
      goTo(at(row, event.key === "Home" ? 0 : cellsOf(rows()[row]).length - 1), event.shiftKey);
      event.preventDefault();
    } else if (event.key === "Enter" || event.key === "F2") {
      edit(here);
      event.preventDefault();
    } else if (event.key === "Delete" || event.key === "Backspace") {
      change(picked().flat().filter(cell => cell.dataset.was).map(cell => ({ path: cell.dataset.path, was: cell.dataset.was, typed: "" })));
      event.preventDefault();
    } else if (command && event.key.toLowerCase() === "d") {
      const [first, ...below] = picked();
      change(below.flatMap(line => line.map((cell, i) => ({ cell, typed: first[i].textContent })))
        .filter(one => one.cell.textContent !== one.typed)
        .map(one => ({ path: one.cell.dataset.path, was: one.cell.dataset.was, typed: one.typed })));
      event.preventDefault();
    } else if (event.key.length === 1 && !command && !event.altKey) {
      edit(here, event.key);
      event.preventDefault();
    }
  }

  function everywhere(event) {
    if (!sheet || editor || /^(INPUT|TEXTAREA|SELECT)$/.test(event.target.tagName)) return;
    if (!(event.ctrlKey || event.metaKey)) return;
    const key = event.key.toLowerCase();
    const which = key === "y" || (key === "z" && event.shiftKey) ? "redo" : key === "z" ? "undo" : null;
    if (!which) return;
    event.preventDefault();
    send(sheet.dataset.address + "/" + which, {});
  }

  function move(event) {
    const row = event.item;
    const to = row.closest("tbody").dataset.feeder;
    if (event.from === event.to) return;
    change([{ path: row.dataset.feed, was: row.dataset.feedWas, typed: to }]);
  }

  function start() {
    sheet = page.getElementById("sheet");
    if (!sheet || !sheet.classList.contains("td-circuits")) { sheet = null; return; }
    for (const cell of cells()) cell.tabIndex = -1;
    const first = cells()[0];
    if (first && !here) first.tabIndex = 0;
    for (const group of sheet.querySelectorAll(".td-grid__group"))
      Sortable.create(group, { group: "circuits", draggable: ".td-grid__row", handle: ".td-grid__handle", sort: false, animation: 0, ghostClass: "td-grid__row--moving", onEnd: move });
    sheet.addEventListener("click", event => {
      const cell = event.target.closest(".td-grid__cell");
      if (cell && !(editor && editor.cell === cell)) goTo(cell, event.shiftKey);
    });
    sheet.addEventListener("dblclick", event => {
      const cell = event.target.closest(".td-grid__cell");
      if (cell && !(editor && editor.cell === cell)) edit(cell);
    });
    sheet.addEventListener("focusin", event => {
      const cell = event.target.closest(".td-grid__cell");
      if (cell && cell !== here && !editor) goTo(cell);
      tie(event.target);
    });
    sheet.addEventListener("pointerover", event => tie(event.target));
    // What a sheet asked for that is gone by now has nowhere to go.
    const own = sheet;
    align();
    own.addEventListener("htmx:beforeSwap", event => { if (!own.isConnected) event.detail.shouldSwap = false; });
  }

  // A note and the row it is about light up together.
  function tie(target) {
    const note = target.closest(".td-note[data-place]");
    const row = target.closest(".td-grid__row");
    for (const lit of sheet.querySelectorAll(".td-grid__row--noted")) lit.classList.remove("td-grid__row--noted");
    for (const lit of sheet.querySelectorAll(".td-note--noted")) lit.classList.remove("td-note--noted");
    if (note) for (const one of rows()) if (one.dataset.circuit === note.dataset.place) one.classList.add("td-grid__row--noted");
    if (row) for (const one of sheet.querySelectorAll(".td-note[data-place]")) if (one.dataset.place === row.dataset.circuit) one.classList.add("td-note--noted");
  }

  // Each note stands beside the row it is about, or as near below as those before it let it.
  function align() {
    const margin = sheet && sheet.querySelector("#margin");
    if (!margin) return;
    const notes = [...margin.querySelectorAll(":scope > .td-note[data-place]")];
    for (const note of notes) note.style.marginTop = "";
    if (getComputedStyle(margin).display !== "flex") return;
    for (const note of notes) {
      const place = CSS.escape(note.dataset.place);
      const row = sheet.querySelector(`.td-grid [data-circuit="${place}"], .td-grid [data-place="${place}"]`);
      const gap = row && row.getBoundingClientRect().top - note.getBoundingClientRect().top;
      if (gap > 0) note.style.marginTop = parseFloat(getComputedStyle(note).marginTop) + gap + "px";
    }
  }

  // While an answer arrives somebody may be typing into the next cell: it goes on where it was. Sheet and cursor are put back
  // in one go (no settle delay, see frame.jte): a key between the two would be lost.
  let held = null;
  page.addEventListener("htmx:beforeSwap", event => {
    if (!sheet || event.detail.target !== sheet || !event.detail.shouldSwap) return;
    held = {
      here: here && here.dataset.path, anchor: anchor && anchor.dataset.path,
      typed: editor && editor.input.value, from: editor && editor.input.selectionStart, to: editor && editor.input.selectionEnd,
      left: sheet.querySelector(".td-table").scrollLeft, focus: sheet.contains(page.activeElement),
    };
    editor = null;
  });
  page.addEventListener("htmx:afterSettle", event => {
    if (!held || !page.getElementById("sheet")) return;
    const before = held;
    held = null;
    here = anchor = null;
    start();
    if (!sheet) return;
    sheet.querySelector(".td-table").scrollLeft = before.left;
    for (const problem of sheet.querySelectorAll(".td-problems [data-path]")) {
      const cell = byPath(problem.dataset.path);
      if (cell) cell.classList.add("td-grid__cell--refused");
    }
    const cell = before.here && byPath(before.here);
    if (cell && before.focus) {
      goTo(cell);
      const other = before.anchor && byPath(before.anchor);
      if (other) { anchor = other; showPicked(); }
      if (before.typed !== null) { edit(cell, before.typed); editor.input.setSelectionRange(before.from, before.to); }
    }
    answered();
  });
  // Neither saved nor refused: what was typed stays, and goes with the next change or when it is sent again.
  function keep(event) {
    if (!sheet || event.detail.target !== sheet) return;
    sheet.removeAttribute("aria-busy");
    const unsent = sent || [];
    sent = null;
    // What was typed later into the same cell takes its place.
    waiting = unsent.filter(one => !waiting.some(other => other.path === one.path)).concat(waiting);
    for (const one of waiting) {
      const cell = byPath(one.path);
      if (!cell) continue;
      cell.classList.add("td-grid__cell--refused");
      if (!(editor && editor.cell === cell)) cell.textContent = one.typed;
    }
    const said = sheet.querySelector(":scope > .td-problems--trouble");
    if (!said || !waiting.length) return;
    const again = page.createElement("button");
    again.className = "td-button";
    again.textContent = sheet.dataset.again;
    again.addEventListener("click", flush);
    said.append(again);
  }
  page.addEventListener("htmx:responseError", keep);
  page.addEventListener("htmx:sendError", keep);
  addEventListener("beforeunload", event => { if (waiting.length && !sent) event.preventDefault(); });

  page.addEventListener("htmx:afterSettle", event => { if (event.detail.target.id === "margin") align(); });
  addEventListener("resize", align);
  page.addEventListener("keydown", keys);
  page.addEventListener("keydown", everywhere);
  page.addEventListener("paste", event => {
    if (!here || editor || !sheet.contains(page.activeElement)) return;
    const text = event.clipboardData.getData("text/plain");
    if (!text) return;
    event.preventDefault();
    send(sheet.dataset.address + "/paste", { at: here.dataset.path, text });
  });
  page.addEventListener("copy", event => {
    if (!here || editor || !sheet.contains(page.activeElement)) return;
    event.preventDefault();
    event.clipboardData.setData("text/plain", picked().map(line => line.map(cell => cell.textContent).join("\t")).join("\n"));
  });
  start();
}
