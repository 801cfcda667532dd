package tideover.web.circuits;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;
import tideover.papers.Wording;
import tideover.web.circuits.Sheet.Head;
import tideover.web.circuits.Sheet.Part;
import tideover.web.circuits.Sheet.Words;
import tideover.web.edit.CellText;
import tideover.web.edit.Outcome;
import tideover.web.note.Margins;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes sheets: what the page and every change on it show. */
@Component
public final class Sheets {
    private static final String HOUSE = "house";
    private static final String PLAN = "plan";

    private final FieldTable fields;
    private final SiteEdits edits;
    private final Works works;
    private final Frames frames;

    Sheets(FieldTable fields, Works works, Frames frames) {
        this.fields = fields;
        this.edits = new SiteEdits(fields);
        this.works = works;
        this.frames = frames;
    }

    /**
     * The sheet of a site.
     *
     * @param side what is written to; anything but {@code house} is the plan
     */
    public Sheet of(Work work, String side, Outcome last, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        CellText text = CellText.of(fields, words, work.installation());
        Optional<Assessment> whole = works.wholeByNow(work);
        String written = side.equals(HOUSE) ? HOUSE : PLAN;
        SheetBuilder builder = new SheetBuilder(work, whole.orElse(work.atOnce()), words, edits, text, written);
        List<Part> parts = builder.parts();
        return new Sheet(
                frames.of(request, words, work, Stop.CIRCUITS),
                work.address(),
                work.revision().number(),
                written,
                LineLoads.of(work, words),
                Arrays.stream(Column.values())
                        .map(column -> new Head(
                                words.text(column.key()), column.align().name().toLowerCase(java.util.Locale.ROOT)))
                        .toList(),
                parts,
                builder.removed(),
                Arrays.stream(Column.values())
                        .filter(Column::hasList)
                        .map(column -> new Words(SheetBuilder.listId(column), text.wordsOf(column.path())))
                        .toList(),
                new Margins(work, words).of(whole, SheetBuilder.order(parts)),
                works.steps(work),
                last);
    }
}
