package tideover.papers.diagram;

/** How a conductor is drawn. */
record Stroke(Ink ink, Weight weight) {}
