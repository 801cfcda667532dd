package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.wiring.schedule.Label;
import tideover.papers.Wording;

/** The labels to print, kind by kind. */
final class LabelPart implements WiringPart {

    @Override
    public String name() {
        return "labels";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        List<Listing.Group> groups = new ArrayList<>();
        for (Label.Kind kind : Label.Kind.values()) {
            List<List<Cell>> rows = new ArrayList<>();
            for (Label label : wiring.schedules().labels().labels())
                if (label.kind() == kind)
                    rows.add(List.of(
                            Cell.of(label.text()),
                            Cell.of(kind.name()),
                            Cell.of(wording.name(label.at()), label.at().text())));
            if (!rows.isEmpty()) groups.add(new Listing.Group(wording.text("wiring.label." + kind.name()), rows));
        }
        return List.of(new Listing(
                name(),
                wording.text("wiring.labels"),
                List.of(wording.text(groups.isEmpty() ? "wiring.labels.none" : "wiring.labels.how")),
                List.of(
                        Column.words("text", wording.text("wiring.label"), 110),
                        Column.data("kind"),
                        Column.words("at", wording.text("wiring.at"), 160)),
                groups));
    }
}
