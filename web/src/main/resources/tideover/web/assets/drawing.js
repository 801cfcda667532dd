// Drawings may be looked at closely: wheel, drag, two fingers, the keys + − 0, buttons. Without script they scroll.
// Their size is told in widths of the window they are seen through.
const LARGEST = 8;
const STEP = 1.25;

export function drawing(page) {
  for (const frame of page.querySelectorAll("[data-drawing]")) {
    // Answers bring drawings too.
    if (frame.dataset.drawing === "watched") continue;
    frame.dataset.drawing = "watched";
    for (const hint of frame.querySelectorAll(".td-only-script")) hint.hidden = false;
    watch(frame);
  }
}

function watch(frame) {
  const view = frame.querySelector("[data-view]");
  const svg = view && view.querySelector("svg");
  if (!svg) return;
  const kept = `drawing ${location.pathname} ${[...document.querySelectorAll("[data-view]")].indexOf(view)}`;
  // As large as without script, so that it can be read.
  let scale = 0;

  // The point under (x, y) of the window stays where it is.
  function zoom(to, x, y) {
    const next = Math.min(LARGEST, Math.max(1, to));
    if (next === scale) return false;
    const box = svg.getBoundingClientRect();
    const across = (x - box.left) / box.width, down = (y - box.top) / box.height;
    scale = next;
    svg.style.width = `${scale * 100}%`;
    svg.style.minWidth = "0";
    const now = svg.getBoundingClientRect();
    view.scrollLeft += now.left + across * now.width - x;
    view.scrollTop += now.top + down * now.height - y;
    keep();
    return true;
  }

  function zoomMiddle(to) {
    const box = view.getBoundingClientRect();
    zoom(to, box.left + box.width / 2, box.top + box.height / 2);
  }

  function keep() {
    sessionStorage.setItem(kept, JSON.stringify([scale, view.scrollLeft, view.scrollTop]));
  }

  // Another state of the same drawing is looked at in the same place.
  function again() {
    try {
      const [before, left, top] = JSON.parse(sessionStorage.getItem(kept)) || [svg.getBoundingClientRect().width / view.clientWidth, 0, 0];
      zoomMiddle(before);
      view.scrollLeft = left;
      view.scrollTop = top;
    } catch { sessionStorage.removeItem(kept); }
  }

  frame.addEventListener("click", event => {
    const button = event.target.closest("[data-zoom]");
    if (!button) return;
    const way = button.dataset.zoom;
    zoomMiddle(way === "in" ? scale * STEP : way === "out" ? scale / STEP : 1);
  });

  view.addEventListener("keydown", event => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "+" || event.key === "=") zoomMiddle(scale * STEP);
    else if (event.key === "-" || event.key === "−") zoomMiddle(scale / STEP);
    else if (event.key === "0") zoomMiddle(1);
    else return;
    event.preventDefault();
  });

  view.addEventListener("wheel", event => {
    // Whoever scrolls past it means the page; whoever clicked into it means the drawing.
    if (event.shiftKey || !event.ctrlKey && !view.contains(document.activeElement)) return;
    // At its smallest the drawing lets the page go on scrolling.
    if (zoom(scale * Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0015)), event.clientX, event.clientY)) event.preventDefault();
    else if (event.ctrlKey) event.preventDefault();
  }, { passive: false });

  drag(view, keep);
  pinch(view, () => scale, zoom);
  view.addEventListener("scroll", keep, { passive: true });
  again();
}

// With a mouse; fingers scroll by themselves.
function drag(view, done) {
  let from = null, moved = false;
  view.addEventListener("pointerdown", event => {
    if (event.pointerType !== "mouse" || event.button !== 0) return;
    from = { x: event.clientX, y: event.clientY, left: view.scrollLeft, top: view.scrollTop };
    moved = false;
  });
  view.addEventListener("pointermove", event => {
    if (!from || event.pointerType !== "mouse") return;
    if (event.buttons === 0) { from = null; return; }
    const x = event.clientX - from.x, y = event.clientY - from.y;
    if (!moved && Math.abs(x) + Math.abs(y) > 4) { moved = true; view.setPointerCapture(event.pointerId); }
    if (!moved) return;
    view.scrollLeft = from.left - x;
    view.scrollTop = from.top - y;
  });
  view.addEventListener("pointerup", () => { if (from) done(); from = null; });
  view.addEventListener("dragstart", event => event.preventDefault());
  // The end of a drag is no click on what happens to lie there.
  view.addEventListener("click", event => {
    if (moved) { event.preventDefault(); event.stopPropagation(); moved = false; }
  }, true);
}

function pinch(view, scale, zoom) {
  let begun = null;
  const apart = touches => Math.hypot(touches[0].clientX - touches[1].clientX, touches[0].clientY - touches[1].clientY);
  view.addEventListener("touchstart", event => {
    if (event.touches.length === 2) { begun = { apart: apart(event.touches), scale: scale() }; event.preventDefault(); }
  }, { passive: false });
  view.addEventListener("touchmove", event => {
    if (!begun || event.touches.length !== 2) return;
    event.preventDefault();
    const [one, other] = event.touches;
    zoom(begun.scale * apart(event.touches) / begun.apart, (one.clientX + other.clientX) / 2, (one.clientY + other.clientY) / 2);
  }, { passive: false });
  view.addEventListener("touchend", event => { if (event.touches.length < 2) begun = null; });
}
