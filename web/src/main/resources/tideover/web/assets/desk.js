// Loaded on every page, as one module: what follows only makes easier what works without it.
import { drawing } from "/assets/drawing.js";
import { grid } from "/assets/grid.js";
import { trouble } from "/assets/trouble.js";

document.documentElement.classList.add("td-script");
for (const hint of document.querySelectorAll(".td-only-script")) hint.hidden = false;

// Every request of ours carries the token that no other site knows.
document.body.addEventListener("htmx:configRequest", event => {
  event.detail.headers["X-CSRF-TOKEN"] = document.body.dataset.formToken;
});
// What was refused comes with a status of its own and is shown all the same.
document.body.addEventListener("htmx:beforeSwap", event => {
  if (event.detail.xhr.status === 422 || event.detail.xhr.status === 409) {
    event.detail.shouldSwap = true;
    event.detail.isError = false;
  }
});
trouble(document);
drawing(document);
document.body.addEventListener("htmx:load", event => drawing(event.detail.elt.parentNode || document));
grid(document);
