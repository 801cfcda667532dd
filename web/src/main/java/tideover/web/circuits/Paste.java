package tideover.web.circuits;

import java.util.ArrayList;
import java.util.List;
import tideover.web.circuits.Sheet.Cell;
import tideover.web.circuits.Sheet.Group;
import tideover.web.circuits.Sheet.Part;
import tideover.web.circuits.Sheet.Row;
import tideover.web.edit.Typed;
import tideover.web.work.Work;

/** Cells of a clipboard laid over the sheet: to the right and down; where rows end, circuits are added to that group. */
final class Paste {
    private Paste() {}

    /**
     * What is to be changed.
     *
     * @param at   path of the cell at the top left
     * @param text lines of cells with tabs between them, as spreadsheets leave them
     */
    static List<Typed> of(Work work, Sheet sheet, String at, String text) {
        List<Typed> typed = new ArrayList<>();
        for (Part part : sheet.parts())
            for (Group group : part.groups())
                for (int row = 0; row < group.rows().size(); row++) {
                    List<Cell> cells = group.rows().get(row).cells();
                    for (int column = 0; column < cells.size(); column++)
                        if (cells.get(column).path().equals(at)) {
                            lay(work, group, row, column, lines(text), typed);
                            return typed;
                        }
                }
        return typed;
    }

    private static void lay(
            Work work, Group group, int firstRow, int firstColumn, List<List<String>> lines, List<Typed> typed) {
        Column[] columns = Column.values();
        int added = 0;
        for (int i = 0; i < lines.size(); i++) {
            int row = firstRow + i;
            List<String> line = lines.get(i);
            int cells = Math.min(line.size(), columns.length - firstColumn);
            if (row < group.rows().size()) {
                Row shown = group.rows().get(row);
                for (int j = 0; j < cells; j++) {
                    Cell cell = shown.cells().get(firstColumn + j);
                    if (!cell.text().equals(line.get(j))) typed.add(new Typed(cell.path(), cell.was(), line.get(j)));
                }
            } else {
                String id = SheetBuilder.newId(work, ++added);
                typed.add(new Typed("plan.circuits." + id, "", "{fedFrom: %s}".formatted(group.feeder())));
                for (int j = 0; j < cells; j++)
                    if (!line.get(j).isBlank())
                        typed.add(new Typed(
                                "plan.%s.%s".formatted(id, columns[firstColumn + j].field()), "", line.get(j)));
            }
        }
    }

    private static List<List<String>> lines(String text) {
        String[] lines = text.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1);
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < lines.length; i++)
            // Spreadsheets end the last line too.
            if (i < lines.length - 1 || !lines[i].isEmpty()) cells.add(List.of(lines[i].split("\t", -1)));
        return cells;
    }
}
