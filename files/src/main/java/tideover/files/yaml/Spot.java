package tideover.files.yaml;

/**
 * A place in a file.
 *
 * @param file   name as the reader of a message knows it
 * @param line   from 1; 0 for the file as a whole
 * @param column from 1, in characters; 0 for the file as a whole
 */
public record Spot(String file, int line, int column) {
    /** The file as a whole. */
    public static Spot whole(String file) {
        return new Spot(file, 0, 0);
    }
}
