package tideover.papers.terminals;

/**
 * One conductor at a terminal, in words.
 *
 * @param mark its own designation, as on its label
 * @param look colour and section
 * @param end  where its other end is, and what lies between
 */
record Lead(String mark, String look, String end) {}
