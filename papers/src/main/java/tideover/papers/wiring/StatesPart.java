package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tideover.engine.site.OperatingState;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.StateTable;
import tideover.papers.Wording;

/** What each indicator, contact and terminal should read in each operating state. */
final class StatesPart implements WiringPart {

    @Override
    public String name() {
        return "states";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        StateTable table = StateTable.of(wiring.model().house());
        List<Column> columns = new ArrayList<>();
        columns.add(Column.data("reading"));
        columns.add(Column.words("place", wording.text("model.where"), 50));
        columns.add(Column.words("what", wording.text("model.what"), 58));
        for (OperatingState state : table.states())
            columns.add(Column.words(state.name(), wording.capitalised(wording.word(state)), 34));
        List<Listing.Group> groups = new ArrayList<>();
        for (StateTable.Group group : StateTable.Group.values()) {
            List<List<Cell>> rows = table.rows().stream()
                    .filter(row -> row.group() == group)
                    .map(row -> cells(row, table.states(), wiring))
                    .toList();
            if (!rows.isEmpty()) groups.add(new Listing.Group(wording.word(group), rows));
        }
        List<String> notes = groups.isEmpty()
                ? List.of(wording.text("model.none"))
                : List.of(wording.text("model.states.how"), wording.text("model.states.live"));
        return List.of(new Listing(name(), wording.text("model.states"), notes, columns, groups));
    }

    private static List<Cell> cells(StateTable.Row row, List<OperatingState> states, WiringData wiring) {
        WiringWording words = wiring.model().words();
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(row.reading().id()));
        cells.add(Cell.of(words.place(row.reading())));
        boolean isTerminal = row.group() == StateTable.Group.CONTROL_TERMINALS;
        cells.add(Cell.of(isTerminal ? words.name(row.reading().place()) : words.what(row.reading())));
        Map<OperatingState, Shown> shown = row.shown();
        for (OperatingState state : states) {
            Shown value = shown.get(state);
            cells.add(value == null ? new Cell("?", null) : Cell.of(words.shown(row.reading(), value), value.name()));
        }
        return cells;
    }
}
