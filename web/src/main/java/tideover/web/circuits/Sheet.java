package tideover.web.circuits;

import java.util.List;
import tideover.store.site.Steps;
import tideover.web.edit.Outcome;
import tideover.web.note.Margin;
import tideover.web.page.Frame;

/**
 * The circuits of a site as they stand on the sheet.
 *
 * @param address of the site
 * @param base    number of the revision
 * @param side    what is written to: {@code house} or {@code plan}
 * @param loads   what the lines carry in island mode
 * @param heads   headings of the columns
 * @param parts   what stays on, then what lies below the line, then what nobody can say yet
 * @param removed circuits that the plan takes out
 * @param words   what may be typed in columns with fixed words
 * @param steps   what undo and redo would do
 * @param last    what came of the last change
 */
public record Sheet(
        Frame frame,
        String address,
        long base,
        String side,
        List<LineLoad> loads,
        List<Head> heads,
        List<Part> parts,
        List<Removed> removed,
        List<Words> words,
        Margin margin,
        Steps steps,
        Outcome last) {
    public Sheet {
        loads = List.copyOf(loads);
        heads = List.copyOf(heads);
        parts = List.copyOf(parts);
        removed = List.copyOf(removed);
        words = List.copyOf(words);
    }

    /**
     * One line in island mode.
     *
     * @param line    its name
     * @param text    current against what the source gives, worded
     * @param sign    of the outcome
     * @param look    end of its style
     * @param percent of the bar that is filled, 0 to 100
     * @param mark    where on the bar the source's current stands, 0 to 100
     */
    public record LineLoad(String line, String text, String sign, String look, int percent, int mark) {}

    /**
     * A column.
     *
     * @param words heading
     * @param align {@code start} or {@code end}
     */
    public record Head(String words, String align) {}

    /**
     * What lies on one side of the double line.
     *
     * @param look  {@code island}, {@code grid} or {@code unknown}
     * @param title what stands on the line above it; empty at the top
     */
    public record Part(String look, String title, List<Group> groups) {
        public Part {
            groups = List.copyOf(groups);
        }
    }

    /**
     * Circuits at one feeder.
     *
     * @param feeder id of the thing that feeds them
     * @param newId  id that a circuit added here would bear
     */
    public record Group(String feeder, String title, String newId, List<Row> rows) {
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One circuit.
     *
     * @param side    whether it stays on, worded
     * @param status  what becomes of it, worded; empty where nothing does
     * @param mark    sign of its worst finding; empty where all is well
     * @param feed    the fact that says where it hangs, to move it
     * @param taking  the edit that takes it out
     */
    public record Row(
            String id,
            String name,
            String look,
            String side,
            String status,
            String mark,
            String markLook,
            Cell feed,
            Cell taking,
            List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * One fact.
     *
     * @param path  of its edit
     * @param was   what stands there, as an edit names it; empty where nothing does
     * @param text  what stands there, as it is read and typed
     * @param align {@code start} or {@code end}
     * @param label what it is called and of which circuit, for whoever hears the page
     * @param list  id of the list of words that may be typed; empty where there is none
     * @param look  {@code planned}, {@code assumed} or empty
     */
    public record Cell(String path, String was, String text, String align, String label, String list, String look) {}

    /** A circuit that the plan takes out, and the edit that lets it stay. */
    public record Removed(String name, Cell staying) {}

    /** Words that may be typed. */
    public record Words(String id, List<String> words) {
        public Words {
            words = List.copyOf(words);
        }
    }
}
