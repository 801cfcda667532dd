package tideover.web.edit;

/**
 * One value as it came from a page.
 *
 * @param path  of the edit
 * @param was   what the page showed, as edits name it; empty where nothing stood there
 * @param typed what is to stand there, as the person wrote it; empty forgets
 */
public record Typed(String path, String was, String typed) {}
