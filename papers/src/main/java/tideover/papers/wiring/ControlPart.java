package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Unit;
import tideover.engine.site.ControlCable;
import tideover.engine.site.Screen;
import tideover.engine.wiring.schedule.ControlEnd;
import tideover.engine.wiring.schedule.CoreKind;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.papers.Wording;

/** The control schedule: every core from terminal to terminal, spare ones and screens too. */
final class ControlPart implements WiringPart {

    @Override
    public String name() {
        return "control";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        List<Listing.Group> groups = new ArrayList<>();
        for (List<CoreRow> rows : wiring.schedules().control().cables())
            groups.add(new Listing.Group(
                    title(rows, wiring),
                    rows.stream().map(row -> cells(row, wiring)).toList()));
        List<String> notes = List.of(wording.text(groups.isEmpty() ? "wiring.control.none" : "wiring.control.how"));
        return List.of(new Listing(name(), wording.text("wiring.control"), notes, columns(wording), groups));
    }

    private static List<Column> columns(Wording wording) {
        return List.of(
                Column.words("core", wording.text("wiring.core"), 17),
                Column.data("cable"),
                Column.data("kind"),
                Column.words("mark", wording.text("wiring.mark"), 26),
                Column.data("colour"),
                Column.numbers("pair", wording.text("wiring.pair"), 9),
                Column.data("fromTerminal"),
                Column.words("from", wording.text("wiring.from"), 34),
                Column.words("fromPort", wording.text("wiring.port"), 62),
                Column.data("toTerminal"),
                Column.words("to", wording.text("wiring.to"), 34),
                Column.words("toPort", wording.text("wiring.port"), 62),
                Column.data("crossSectionMm2"),
                Column.data("lengthM"),
                Column.data("labelFrom"),
                Column.data("labelTo"),
                Column.words("note", wording.text("wiring.note"), 26));
    }

    private static List<Cell> cells(CoreRow row, WiringData wiring) {
        Wording wording = wiring.wording();
        Ports ports = new Ports(wiring.net(), wording);
        return List.of(
                Cell.of(row.designation()),
                Cell.of(row.cable().text()),
                Cell.of(row.kind().name()),
                Cell.of(mark(row, wording), row.mark()),
                Cell.of("", row.colour() == null ? null : row.colour().code()),
                row.pair() == 0 ? Cell.EMPTY : Cell.of(row.pair()),
                terminal(row.from()),
                Cell.of(row.from() == null ? null : row.from().text()),
                Cell.of(ports.at(row.from())),
                terminal(row.to()),
                Cell.of(row.to() == null ? null : row.to().text()),
                Cell.of(ports.at(row.to())),
                Cell.of(row.crossSectionMm2(), Unit.MM2, wording),
                Cell.of(row.lengthM(), Unit.M, wording),
                Cell.of(row.labelFrom()),
                Cell.of(row.labelTo()),
                Cell.of(
                        row.kind() == CoreKind.CORE
                                ? ""
                                : wording.text("wiring.kind." + row.kind().name())));
    }

    private static Cell terminal(@Nullable ControlEnd end) {
        return Cell.of(end == null ? null : end.terminal().toString());
    }

    private static String mark(CoreRow row, Wording wording) {
        if (row.colour() != null) return new ColourWords(wording).of(row.colour(), null);
        return row.mark() == null ? "" : row.mark();
    }

    private static String title(List<CoreRow> rows, WiringData wiring) {
        Wording wording = wiring.wording();
        CoreRow first = rows.get(0);
        List<String> parts = new ArrayList<>();
        long cores = rows.stream().filter(row -> row.kind() != CoreKind.SCREEN).count();
        parts.add(wording.text(
                "wiring.cores",
                String.valueOf(cores),
                first.crossSectionMm2() == null ? "?" : wording.amount(first.crossSectionMm2(), Unit.MM2)));
        parts.add(first.lengthM() == null ? "?" : wording.amount(first.lengthM(), Unit.M));
        if (first.pair() > 0) parts.add(wording.text("wiring.pairs"));
        wiring.installation()
                .find(first.cable())
                .filter(ControlCable.class::isInstance)
                .map(cable -> ((ControlCable) cable).screen())
                .filter(screen -> screen != Screen.NONE)
                .ifPresent(screen -> parts.add(wording.word(screen)));
        return wording.text("wiring.cable", wording.name(first.cable()), String.join(", ", parts));
    }
}
