// What could not be saved is said beside what it was about; what was typed there stays as it is.
const OURS = "td-problems--trouble";

function say(place, text) {
  if (!place || !text) return;
  for (const before of place.querySelectorAll(":scope > ." + OURS)) before.remove();
  text.classList.add(OURS);
  place.prepend(text);
  // Until the next answer brings the head of the page anew.
  for (const kept of document.querySelectorAll(".td-head__kept")) kept.textContent = kept.dataset.unsaved;
  text.scrollIntoView({ block: "nearest" });
}

// Whole pages that say what is the matter, and parts that do.
function said(page, answer) {
  const other = new DOMParser().parseFromString(answer, "text/html");
  const part = other.querySelector(".td-problems");
  if (part) return page.importNode(part, true);
  const text = page.createElement("div");
  text.className = "td-problems";
  text.setAttribute("role", "alert");
  for (const line of other.querySelectorAll(".td-notice h1, .td-notice p")) {
    const copy = page.createElement(line.tagName === "H1" ? "h2" : "p");
    copy.textContent = line.textContent;
    text.append(copy);
  }
  return text;
}

// What asks again and again by itself is not worth a word.
const isTyped = event => event.detail.requestConfig.verb !== "get";

export function trouble(page) {
  page.addEventListener("htmx:responseError", event => {
    if (isTyped(event)) say(event.detail.target, said(page, event.detail.xhr.responseText));
  });
  page.addEventListener("htmx:sendError", event => {
    const words = page.getElementById("no-answer");
    if (isTyped(event) && words) say(event.detail.target, words.content.firstElementChild.cloneNode(true));
  });
}
