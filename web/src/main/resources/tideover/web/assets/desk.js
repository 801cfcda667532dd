// Loaded on every page.
