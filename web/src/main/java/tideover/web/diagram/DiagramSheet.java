package tideover.web.diagram;

import java.util.List;
import tideover.web.page.Frame;

/**
 * The diagram of a site.
 *
 * @param address   of the site
 * @param states    in which it may be shown
 * @param sentences what is so in the state shown
 * @param svg       the drawing, an SVG element
 * @param label     what is drawn, in words
 * @param file      address of the drawing as a file
 */
public record DiagramSheet(
        Frame frame,
        String address,
        List<StateLink> states,
        List<String> sentences,
        String svg,
        String label,
        String file) {
    public DiagramSheet {
        states = List.copyOf(states);
        sentences = List.copyOf(sentences);
    }
}
