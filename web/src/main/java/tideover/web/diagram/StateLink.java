package tideover.web.diagram;

/**
 * A state that may be shown instead.
 *
 * @param words   its name
 * @param address of the page then
 * @param here    {@code here} where it is the one shown, else empty
 */
public record StateLink(String words, String address, String here) {}
