package tideover.web.handover;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.web.diagram.StateLink;
import tideover.web.jobs.JobView;
import tideover.web.note.Margin.Pending;
import tideover.web.page.Frame;

/**
 * What is handed over.
 *
 * @param address  of the site
 * @param verdict  sentence of the whole
 * @param sign     of its outcome
 * @param look     end of the style of its outcome
 * @param counts   how many findings it sums up
 * @param pending  whether slow findings are still computed
 * @param open     what is still open, sentence by sentence, with where it is dealt with
 * @param chapters what goes into the file
 * @param papers   how far the making of the papers is; nothing where it was not asked for
 * @param files    what may be saved at once
 */
public record HandoverSheet(
        Frame frame,
        String address,
        String verdict,
        String sign,
        String look,
        String counts,
        Pending pending,
        List<Open> open,
        List<String> chapters,
        @Nullable JobView papers,
        List<StateLink> files) {
    public HandoverSheet {
        open = List.copyOf(open);
        chapters = List.copyOf(chapters);
        files = List.copyOf(files);
    }

    /**
     * Something that is still open.
     *
     * @param address where it is dealt with
     * @param link    words of the link
     */
    public record Open(String sentence, String address, String link) {}
}
